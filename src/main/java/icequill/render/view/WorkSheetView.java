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
import icequill.work.Hazard;
import icequill.work.Hazards;
import icequill.work.SafetyPaper;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A work sheet as texts, ready for {@code work-sheet.ftlh}. */
public record WorkSheetView(WorkSheet sheet, Sentences sentences) {

    public static Map<String, Object> of(WorkSheet sheet) {
        String country = sheet.shop().address().country();
        return new WorkSheetView(sheet, Sentences.of(sheet.language(), country)).model();
    }

    private Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>(new LetterView(sheet, title(), sentences).model(
                sheet.customer(), sheet.attended().site(), sheet.attended().address(), facts()));
        model.put("working", true);
        model.put("visitRows", rows());
        model.put("load", new LoadView(sheet, sentences).items());
        model.put("cautions", general().stream().map(new CautionWords(sentences)::full).toList());
        sheet.schedule().map(schedule -> new ScheduleView(schedule, sheet.jobs(), sentences).model())
                .ifPresent(timetable -> model.put("timetable", timetable));
        model.put("jobs", jobs());
        return model;
    }

    private Title title() {
        boolean repair = sheet.jobs().stream().allMatch(Job::isRepair);
        return new Title(sentences.word(repair ? "sheet.repair" : "sheet.title"),
                Optional.of(sheet.attended().visit()));
    }

    /**
     * What is said before anything begins: what holds for all work, and what no step is for. All else is said in full at the first
     * step that it is for.
     */
    private Set<Caution> general() {
        Set<Caution> general = EnumSet.noneOf(Caution.class);
        general.addAll(sheet.cautions());
        sheet.jobs().forEach(job -> job.steps().forEach(step -> general.removeAll(step.cautions())));
        Hazard.cautions(SafetyPaper.WORK_SHEET, Hazards.always()).stream().filter(sheet.cautions()::contains)
                .forEach(general::add);
        return general;
    }

    private List<Map<String, String>> facts() {
        return new Details(sentences)
                .add("fact.purchase-order", sheet.attended().order().purchaseOrder())
                .add("fact.store", sheet.attended().storeNumber()).rows();
    }

    private List<Map<String, String>> rows() {
        List<Map<String, String>> rows = new ArrayList<>(
                new VisitView(sheet.attended(), List.of(), sentences).visitRows("sheet.times"));
        rows.addAll(new Details(sentences).add("sheet.access", sheet.access().hours().map(this::hours))
                .add("sheet.ask", sheet.access().contact().map(WorkSheetView::reached))
                .add("sheet.telephone", sheet.access().telephone())
                .add("sheet.parking", sheet.access().parking()).add("sheet.roof", sheet.access().roof())
                .add("sheet.limit", sheet.limit().map(this::limit)).rows());
        rows.addAll(facts());
        return rows;
    }

    private static String reached(Contact contact) {
        return String.join(", ", Stream.of(Optional.of(contact.name()), contact.role(), contact.telephone())
                .flatMap(Optional::stream).toList());
    }

    private String limit(WorkSheet.Limit limit) {
        String amount = limit.amount().getCurrency().getCurrencyCode() + "\u00a0"
                + sentences.formats().amount(limit.amount());
        return limit.raisedBy().map(who -> sentences.word("sheet.limit-raised", amount, who))
                .orElseGet(() -> sentences.word("sheet.limit-alone", amount));
    }

    private String hours(AccessHours hours) {
        return sentences.formats().time(hours.from()) + " – " + sentences.formats().time(hours.until());
    }

    private List<Map<String, Object>> jobs() {
        Set<Caution> said = general();
        List<Map<String, Object>> jobs = new ArrayList<>();
        sheet.jobs().forEach(job -> jobs.add(job(job, said)));
        return jobs;
    }

    /** @param said cautions that were told in full already; those of this job come to them */
    private Map<String, Object> job(Job job, Set<Caution> said) {
        List<Map<String, Object>> steps = new ArrayList<>();
        for (WorkSheet.Step step : job.steps()) {
            steps.add(new StepView(step, job.machine(), sheet, sentences).model(said));
            said.addAll(step.cautions());
        }
        return Map.of("name", new MachineName(job.machine(), sentences).text(), "rows", about(job), "steps", steps);
    }

    private List<Map<String, String>> about(Job job) {
        Machine machine = job.machine();
        Details details = new Details(sentences)
                .add(job.isRepair() ? "machine.complaint" : "machine.reason", job.reason())
                .add("sheet.machine", String.join(", ", sentences.word("make." + ConstantKey.of(machine.make())),
                        sentences.word("cooling." + ConstantKey.of(machine.cooling())),
                        sentences.word("connection." + ConstantKey.of(machine.connection())), storage(machine),
                        refrigerant(machine)))
                .add("sheet.condition", machine.condition());
        if (job.isRepair()) {
            details.add("sheet.warranty", machine.warranty().map(this::warranty));
        }
        return details.rows();
    }

    private String warranty(Machine.Warranty warranty) {
        return sentences.word("sheet.warranty-until", sentences.formats().day(warranty.partsUntil()),
                sentences.formats().day(warranty.laborUntil()), warranty.payer());
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
