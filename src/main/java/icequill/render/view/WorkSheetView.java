package icequill.render.view;

import icequill.document.WorkSheet;
import icequill.document.WorkSheet.Job;
import icequill.explain.ConstantKey;
import icequill.party.AccessHours;
import icequill.party.Contact;
import icequill.party.Machine;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import icequill.work.Caution;
import icequill.work.Flammability;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A work sheet as texts, ready for {@code work-sheet.ftlh}. */
public record WorkSheetView(WorkSheet sheet, Sentences sentences) {

    public static Map<String, Object> of(WorkSheet sheet) {
        String country = sheet.shop().address().country();
        return new WorkSheetView(sheet, Sentences.of(sheet.language(), country)).model();
    }

    private Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(sheet, sentences.word("sheet.title"), sentences).model(sheet.customer(),
                        sheet.attended().site(), sheet.attended().address(), facts()));
        model.put("visitRows", rows());
        model.put("cautions", sheet.cautions().stream().map(caution -> caution(caution, sentences)).toList());
        sheet.schedule().map(schedule -> new ScheduleView(schedule, sheet.jobs(), sentences).model())
                .ifPresent(timetable -> model.put("timetable", timetable));
        model.put("jobs", sheet.jobs().stream().map(this::job).toList());
        return model;
    }

    /** The sentence for a caution. */
    public static String caution(Caution caution, Sentences sentences) {
        return sentences.word("caution." + ConstantKey.of(caution));
    }

    private List<Map<String, String>> facts() {
        return new Details(sentences).add("record.visit", sheet.attended().visit())
                .add("sheet.planned", sentences.formats().day(sheet.attended().arrived().toLocalDate()))
                .add("fact.purchase-order", sheet.attended().order().purchaseOrder())
                .add("fact.store", sheet.attended().storeNumber()).rows();
    }

    private List<Map<String, String>> rows() {
        List<Map<String, String>> rows = new ArrayList<>(
                new VisitView(sheet.attended(), List.of(), sentences).visitRows("sheet.times"));
        rows.addAll(new Details(sentences)
                .add("sheet.ask", sheet.access().contact().map(WorkSheetView::asked))
                .add("sheet.telephone", sheet.access().telephone())
                .add("sheet.access", sheet.access().hours().map(this::hours))
                .add("sheet.parking", sheet.access().parking()).add("sheet.roof", sheet.access().roof()).rows());
        return rows;
    }

    /** Name, role and telephone. */
    private static String asked(Contact contact) {
        return Stream.of(Optional.of(contact.name()), contact.role(), contact.telephone()).flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
    }

    private String hours(AccessHours hours) {
        return sentences.formats().time(hours.from()) + " – " + sentences.formats().time(hours.until());
    }

    private Map<String, Object> job(Job job) {
        List<StepView> steps = new ArrayList<>();
        job.steps().forEach(step -> steps.add(new StepView(step, job.machine(), sheet, sentences)));
        return Map.of("name", new MachineName(job.machine(), sentences).text(), "rows", about(job), "steps",
                steps.stream().map(StepView::model).toList());
    }

    private List<Map<String, String>> about(Job job) {
        Machine machine = job.machine();
        int attended = job.steps().stream().mapToInt(WorkSheet.Step::attended).sum();
        int unattended = job.steps().stream().mapToInt(WorkSheet.Step::unattended).sum();
        return new Details(sentences).add("sheet.reason", job.reason())
                .add("sheet.machine", String.join(", ", sentences.word("make." + ConstantKey.of(machine.make())),
                        sentences.word("cooling." + ConstantKey.of(machine.cooling())),
                        sentences.word("connection." + ConstantKey.of(machine.connection()))))
                .add("sheet.refrigerant", refrigerant(machine)).add("sheet.storage", storage(machine))
                .add("sheet.condition", machine.condition())
                .add("sheet.minutes", sentences.word("sheet.minutes-of", String.valueOf(attended),
                        String.valueOf(unattended)))
                .rows();
    }

    private String refrigerant(Machine machine) {
        return machine.refrigerant()
                .map(name -> sentences.word("refrigerant." + ConstantKey.of(Flammability.of(machine.refrigerant())),
                        name))
                .orElseGet(() -> sentences.word("refrigerant.not-recorded"));
    }

    private String storage(Machine machine) {
        return sentences.word("storage." + machine.storage().map(ConstantKey::of).orElse("not-recorded"));
    }
}
