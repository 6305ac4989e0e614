package icequill.papers;

import icequill.document.WorkSheet;
import icequill.party.Contact;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.planner.Crew;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.visits.ScheduleAssembly;
import icequill.visits.StepsAssembly;
import icequill.visits.TimetableRequest;
import icequill.visits.VisitContext;
import icequill.visits.VisitReport;
import icequill.work.Caution;
import icequill.work.ChemicalOrder;
import icequill.work.Finding;
import icequill.work.Hazard;
import icequill.work.Hazards;
import icequill.work.SafetyPaper;
import icequill.work.Task;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Puts the work sheet of a planned visit together: its tasks in their order, with what must be said of them. */
public record WorkSheetAssembly(VisitContext hand, Language language) {

    /** The sheet, or why the work must not be done as it is planned. */
    public Checked<WorkSheet> sheet(LocalDate date) {
        Problems problems = new Problems();
        List<Finding> findings = hand.visit().findings();
        if (findings.isEmpty()) {
            problems.add(new Problem(Code.MISSING, hand.visit().place(), "no machine is planned for",
                    "machines, each with its tasks"));
        }
        findings.forEach(finding -> check(finding, problems));
        return problems.or(() -> hand).then(sound -> schedule()).map(schedule -> assembled(date, schedule));
    }

    /** Nobody makes timetables for a crowd. */
    private Checked<Optional<ScheduleAssembly>> schedule() {
        TimetableRequest planning = TimetableRequest.of(hand, OptionalInt.empty());
        return planning.people().size() > Crew.MOST
                ? Checked.sound(Optional.empty())
                : planning.timetable()
                        .map(table -> Optional.of(new ScheduleAssembly(hand, table, planning.people(), language)));
    }

    private void check(Finding finding, Problems problems) {
        if (tasks(finding).isEmpty()) {
            problems.add(new Problem(Code.MISSING, finding.place(),
                    "no task is planned for the machine \"" + finding.machine() + "\"", "tasks"));
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

    private WorkSheet assembled(LocalDate date, Optional<ScheduleAssembly> schedule) {
        Site site = hand.site();
        List<WorkSheet.Job> jobs = hand.visit().findings().stream().map(finding -> job(finding, schedule)).toList();
        return new WorkSheet(date, hand.shop(), language, hand.shop().paper(), site.customer().name(),
                report().attendedWithoutLimit(), new WorkSheet.Access(site.access(), site.parking(), site.roof(),
                        site.contactFor(Contact.Purpose.VISITS), site.contacts().telephone()),
                schedule.map(ScheduleAssembly::schedule), jobs,
                cautions(jobs));
    }

    private WorkSheet.Job job(Finding finding, Optional<ScheduleAssembly> schedule) {
        Machine machine = hand.site().machine(finding.machine()).orElseThrow();
        return new WorkSheet.Job(machine, finding.complaint(),
                new StepsAssembly(machine, tasks(finding), hand.rates(), language,
                        task -> schedule.map(made -> made.turn(machine.id(), task))).steps());
    }

    /** Those of every sheet, and those that a step, a machine or the site asks for. */
    private List<Caution> cautions(List<WorkSheet.Job> jobs) {
        Set<Hazard> hazards = Hazards.always();
        jobs.forEach(job -> hazards.addAll(Hazards.of(hand.site(), job.machine())));
        Set<Caution> all = Hazard.cautions(SafetyPaper.WORK_SHEET, hazards);
        jobs.forEach(job -> job.steps().forEach(step -> all.addAll(step.cautions())));
        return List.copyOf(all);
    }
}
