package icequill.render.view;

import icequill.document.WorkSheet;
import icequill.document.WorkSheet.Job;
import icequill.explain.ConstantKey;
import icequill.party.AccessHours;
import icequill.party.Contact;
import icequill.party.Machine;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import icequill.work.Caution;
import icequill.work.Flammability;
import icequill.work.Hazard;
import icequill.work.Hazards;
import icequill.work.SafetyPaper;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A work sheet as texts, ready for {@code work-sheet.ftlh}. */
public record WorkSheetView(WorkSheet sheet, Sentences sentences) {

    public static Page of(WorkSheet sheet) {
        String country = sheet.shop().address().country();
        return new WorkSheetView(sheet, Sentences.of(sheet.language(), country)).page();
    }

    /**
     * What the sheet says.
     *
     * @param working whether its margins are those of a sheet to write on
     * @param load what is to be on board
     * @param cautions what is said before anything begins
     */
    record Work(boolean working, List<Details.Row> visitRows, List<String> load, List<String> cautions,
            Optional<ScheduleView.Timetable> timetable, List<JobAtMachine> jobs)
            implements
            Texts {}

    /** @param steps none for a repair */
    record JobAtMachine(String name, List<Details.Row> rows, List<StepView.Told> steps) implements Texts {}

    private Page page() {
        return Page.of(new LetterView(sheet, title(), sentences).letter(sheet.customer(), sheet.attended().site(),
                sheet.attended().address(), facts()),
                new Work(true, rows(), new LoadView(sheet, sentences).items(),
                        general().stream().map(new CautionWords(sentences)::full).toList(),
                        sheet.schedule()
                                .map(schedule -> new ScheduleView(schedule, sheet.jobs(), sentences).timetable()),
                        jobs()));
    }

    private LetterView.Title title() {
        boolean repair = sheet.jobs().stream().allMatch(Job::isRepair);
        return new LetterView.Title(sentences.word(repair ? "sheet.repair" : "sheet.title"),
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

    private List<Details.Row> facts() {
        return new Details(sentences)
                .add("fact.purchase-order", sheet.attended().order().purchaseOrder())
                .add("fact.store", sheet.attended().storeNumber()).rows();
    }

    private List<Details.Row> rows() {
        List<Details.Row> rows = new ArrayList<>(
                new VisitView(sheet.attended(), List.of(), sentences).visitRows("sheet.times"));
        rows.addAll(new Details(sentences).add("sheet.access", sheet.access().hours().map(this::hours))
                .add("sheet.ask", sheet.access().contact().map(WorkSheetView::reached))
                .add("sheet.telephone", sheet.access().telephone())
                .add("sheet.parking", sheet.access().parking()).add("sheet.roof", sheet.access().roof())
                .add("sheet.limit", sheet.limit().map(this::limit)).rows());
        rows.addAll(facts());
        return List.copyOf(rows);
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

    private List<JobAtMachine> jobs() {
        Set<Caution> said = general();
        List<JobAtMachine> jobs = new ArrayList<>();
        sheet.jobs().forEach(job -> jobs.add(job(job, said)));
        return List.copyOf(jobs);
    }

    /** @param said cautions that were told in full already; those of this job come to them */
    private JobAtMachine job(Job job, Set<Caution> said) {
        List<StepView.Told> steps = new ArrayList<>();
        for (WorkSheet.Step step : job.steps()) {
            steps.add(new StepView(step, job.machine(), sheet, sentences).told(said));
            said.addAll(step.cautions());
        }
        return new JobAtMachine(new MachineName(job.machine(), sentences).text(), about(job), List.copyOf(steps));
    }

    private List<Details.Row> about(Job job) {
        Machine machine = job.machine();
        Details details = new Details(sentences)
                .add(job.isRepair() ? "machine.complaint" : "machine.reason", job.reason())
                .add("sheet.machine", String.join(", ", sentences.word("make." + ConstantKey.of(machine.make())),
                        sentences.word("cooling." + ConstantKey.of(machine.cooling())),
                        sentences.word("connection." + ConstantKey.of(machine.connection())), storage(machine),
                        refrigerant(machine)))
                .add("sheet.condition", machine.condition());
        job.earlier().forEach(repair -> details.add(
                repair.isWanted() ? "sheet.earlier-wanted" : "sheet.earlier-declined",
                sentences.word("sheet.earlier", repair.text(), sentences.formats().day(repair.day()))));
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
