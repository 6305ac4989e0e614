package icequill.papers;

import icequill.document.WorkSheet;
import icequill.life.repair.RecommendedRepair;
import icequill.party.Contact;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.planner.Crew;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Material;
import icequill.visits.DayPlan;
import icequill.visits.ScheduleAssembly;
import icequill.visits.StepsAssembly;
import icequill.visits.Stop;
import icequill.visits.TimetableRequest;
import icequill.visits.VisitContext;
import icequill.visits.VisitReport;
import icequill.visits.WorkDays;
import icequill.work.Caution;
import icequill.work.ChemicalOrder;
import icequill.work.Finding;
import icequill.work.Hazard;
import icequill.work.Hazards;
import icequill.work.Quantity;
import icequill.work.SafetyPaper;
import icequill.work.Task;
import icequill.work.VisitLine;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Puts the work sheets of a planned visit together: its tasks in their order, with what must be said of them.
 *
 * @param open repairs that were recommended at a site and are not done, by its id
 */
public record WorkSheetAssembly(VisitContext hand, Language language, Map<String, List<RecommendedRepair>> open) {

    /** The sheet of a planned visit, for its own shop; none for one that is only proposed, or why the work must not be done. */
    public static Validated<Optional<WorkSheet>> ofPlanned(VisitContext hand, LocalDate date) {
        return hand.visit().proposal().isPresent()
                ? Validated.valid(Optional.empty())
                : new WorkSheetAssembly(hand, hand.shop().language(), Map.of()).sheets(date)
                        .map(sheets -> Optional.of(sheets.getFirst().sheet()));
    }

    /** The sheet of each day that the visit takes, or why the work must not be done as it is planned. */
    public Validated<List<NamedSheet>> sheets(LocalDate date) {
        return checked().then(valid -> isWithoutTimetable()
                ? Validated.valid(List.of(new NamedSheet(hand.visit().id(), assembled(date, Optional.empty()))))
                : new WorkDays(TimetableRequest.of(hand, OptionalInt.empty())).stops()
                        .map(stops -> stops.stream().map(stop -> of(stop, date)).toList()));
    }

    /**
     * The sheets of two visits of a day by the same crew, or why they cannot be done.
     *
     * @param open repairs that were recommended at a site and are not done, by its id
     */
    public static Validated<List<NamedSheet>> sheets(DayPlan day, Language language, LocalDate date,
            Map<String, List<RecommendedRepair>> open) {
        WorkSheetAssembly first = new WorkSheetAssembly(day.first().hand(), language, open);
        return first.checked().then(valid -> new WorkSheetAssembly(day.next(), language, open).checked())
                .then(valid -> day.stops()).map(stops -> stops.stream().map(stop -> first.of(stop, date)).toList());
    }

    private NamedSheet of(Stop stop, LocalDate date) {
        return new NamedSheet(stop.name(), new WorkSheetAssembly(stop.planning().hand(), language, open)
                .assembled(date, Optional.of(stop)));
    }

    private Validated<VisitContext> checked() {
        Problems problems = new Problems();
        List<Finding> findings = hand.visit().findings();
        if (findings.isEmpty()) {
            problems.add(new Problem(Code.MISSING, hand.visit().place(), "no machine is planned for",
                    "machines, each with its tasks"));
        }
        findings.forEach(finding -> check(finding, problems));
        return problems.or(() -> hand);
    }

    /** How long a repair takes is not known, and nobody makes timetables for a crowd. */
    private boolean isWithoutTimetable() {
        return hand.visit().findings().stream().anyMatch(finding -> tasks(finding).isEmpty())
                || TimetableRequest.of(hand, OptionalInt.empty()).people().size() > Crew.MOST;
    }

    private void check(Finding finding, Problems problems) {
        if (tasks(finding).isEmpty() && hand.visit().call().isEmpty()) {
            problems.add(new Problem(Code.MISSING, finding.place(),
                    "no task is planned for the machine \"" + finding.machine() + "\"",
                    "tasks, or the visit's call, for a sheet on which a repair is written down"));
        }
        problems.addAll(ChemicalOrder.problems(tasks(finding).stream()
                .map(task -> new ChemicalOrder.Step(task.id(), hand.rates().chemistry(task), task.procedure(),
                        finding.place()))
                .toList()));
    }

    private List<Task> tasks(Finding finding) {
        return report().done(finding).stream().sorted(Comparator.comparingInt(Task::order)).toList();
    }

    private VisitReport report() {
        return new VisitReport(hand.site(), hand.visit(), hand.rates(), language);
    }

    private WorkSheet assembled(LocalDate date, Optional<Stop> stop) {
        Site site = hand.site();
        Optional<ScheduleAssembly> schedule = stop.map(planned -> ScheduleAssembly.of(planned, language));
        List<WorkSheet.Job> jobs = hand.visit().findings().stream().map(finding -> job(finding, schedule)).toList();
        return new WorkSheet(date, hand.shop(), language, hand.shop().paper(), site.customer().name(),
                report().attendedWithoutLimit(), access(), limit(), load(), schedule.map(ScheduleAssembly::schedule),
                jobs,
                cautions(jobs));
    }

    private WorkSheet.Access access() {
        Site site = hand.site();
        return new WorkSheet.Access(site.access(), site.parking(), site.roof(),
                site.contactFor(Contact.Purpose.VISITS), site.contacts().telephone());
    }

    private Optional<WorkSheet.Limit> limit() {
        Optional<String> approver = hand.visit().order().approver()
                .or(() -> hand.site().contactFor(Contact.Purpose.APPROVALS)
                        .map(who -> who.telephone().map(number -> who.name() + ", " + number).orElse(who.name())));
        return hand.visit().order().limit().map(amount -> new WorkSheet.Limit(amount, approver));
    }

    /** What the tasks dose, and the filters and parts that the visit names. */
    private List<WorkSheet.Load> load() {
        Map<String, BigDecimal> amounts = new LinkedHashMap<>();
        hand.visit().findings().forEach(finding -> {
            Machine machine = hand.site().machine(finding.machine()).orElseThrow();
            tasks(finding).stream().flatMap(task -> task.doses().stream()).forEach(dose -> amounts.merge(
                    dose.material(), dose.quantity(machine.harvestRate()).orElseThrow(), BigDecimal::add));
        });
        hand.visit().lines().stream().flatMap(line -> line instanceof VisitLine.MaterialUsed used
                ? Stream.of(used)
                : Stream.empty()).forEach(used -> amounts.merge(used.material(), used.quantity(), BigDecimal::add));
        Stream<WorkSheet.Load> own = hand.visit().lines().stream()
                .flatMap(line -> line instanceof VisitLine.Own words && words.isPutIn()
                        ? Stream.of(new WorkSheet.Load(words.text(), words.quantity()))
                        : Stream.empty());
        Stream<WorkSheet.Load> named = amounts.entrySet().stream().map(each -> {
            Material material = hand.rates().material(each.getKey()).orElseThrow();
            return new WorkSheet.Load(material.name().in(language), new Quantity(each.getValue(), material.unit()));
        });
        return Stream.concat(named, own).toList();
    }

    private WorkSheet.Job job(Finding finding, Optional<ScheduleAssembly> schedule) {
        Machine machine = hand.site().machine(finding.machine()).orElseThrow();
        return new WorkSheet.Job(machine, finding.complaint(), earlier(machine),
                new StepsAssembly(machine, tasks(finding), hand.rates(), language,
                        task -> schedule.map(made -> made.turn(machine.id(), task))).steps());
    }

    private List<WorkSheet.Earlier> earlier(Machine machine) {
        return open.getOrDefault(hand.site().id(), List.of()).stream()
                .filter(repair -> repair.machine().equals(machine.id()))
                .map(repair -> new WorkSheet.Earlier(repair.day(), repair.text(), repair.isWanted())).toList();
    }

    /** Those of every sheet, and those that a step, a machine or the site asks for. */
    private List<Caution> cautions(List<WorkSheet.Job> jobs) {
        Set<Hazard> hazards = Hazards.always();
        jobs.forEach(job -> hazards.addAll(Hazards.of(hand.site(), job.machine())));
        jobs.stream().filter(WorkSheet.Job::isRepair).forEach(job -> hazards.addAll(Hazards.ofRepair(job.machine())));
        Set<Caution> all = Hazard.cautions(SafetyPaper.WORK_SHEET, hazards);
        jobs.forEach(job -> job.steps().forEach(step -> all.addAll(step.cautions())));
        return List.copyOf(all);
    }
}
