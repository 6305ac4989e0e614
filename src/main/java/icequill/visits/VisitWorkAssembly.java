package icequill.visits;

import icequill.party.Layout;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.planner.Crew;
import icequill.planner.MachineTask;
import icequill.planner.VisitWork;
import icequill.planner.WalkTimes;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.CrewRules;
import icequill.rates.LaborRates;
import icequill.rates.Rates;
import icequill.work.Chemistry;
import icequill.work.Finding;
import icequill.work.Hazard;
import icequill.work.Hazards;
import icequill.work.MachineState;
import icequill.work.Procedure;
import icequill.work.Qualification;
import icequill.work.Task;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Puts a planned visit as the planner asks for it: its tasks, the ways between the machines.
 *
 * @param findings what is to be done at each machine, by tasks that the rates know
 * @param place of the visit, for a problem
 */
public record VisitWorkAssembly(Site site, Rates rates, List<Finding> findings, Place place) {

    /** What a task is called that pours a cleaner in, whatever cleaner, and one that flushes it out. */
    public static final String POUR = "pour";
    public static final String FLUSH = "flush";

    static VisitWorkAssembly of(VisitContext hand) {
        return new VisitWorkAssembly(hand.site(), hand.rates(), hand.visit().findings(), hand.visit().place());
    }

    /** What is to be done, or that nothing is. */
    public Validated<VisitWork> work() {
        Problems problems = new Problems();
        List<MachineTask> tasks = findings.stream().flatMap(this::tasks).toList();
        if (tasks.isEmpty()) {
            problems.add(Code.MISSING, place, "no task is planned at any machine",
                    "machines, each with its tasks");
        }
        findings.forEach(finding -> circulation(finding, problems));
        Set<String> met = new HashSet<>();
        findings.stream().filter(finding -> !met.add(finding.machine()))
                .forEach(again -> problems.add(Code.DUPLICATE_NAME, again.place(),
                        "machine \"" + again.machine() + "\" is planned a second time",
                        "each machine once, with all its tasks"));
        return problems.or(() -> new VisitWork(walks(), pairs(), sets(), tasks));
    }

    /** The site's own minutes for a machine may not be longer than the label of what circulates allows. */
    private void circulation(Finding finding, Problems problems) {
        for (Task task : rates.done(finding)) {
            Optional<Layout.Circulation> own = own(site, task, finding.machine());
            Optional<Integer> most = task.doses().stream().flatMap(dose -> rates.material(dose.material()).stream())
                    .flatMap(material -> material.label().stream()).flatMap(label -> label.minutes().most().stream())
                    .min(Comparator.naturalOrder());
            own.filter(minutes -> minutes.most() > most.orElse(minutes.most()))
                    .ifPresent(minutes -> problems.add(Code.OUT_OF_RANGE, finding.place(),
                            "the site lets a cleaner circulate for " + minutes.most() + " minutes in \""
                                    + finding.machine() + "\", longer than its label",
                            "at most " + most.orElseThrow() + " in the site's layout"));
        }
    }

    WalkTimes walks() {
        Layout layout = site.layout();
        List<String> machines = findings.stream().map(Finding::machine).distinct().toList();
        return WalkTimes.of(machines, layout.walk(), layout.ways().stream()
                .map(way -> new WalkTimes.Walk(way.one(), way.other(), way.minutes())).toList());
    }

    /** A machine that is not touched on the visit makes ice all the time. */
    private List<VisitWork.Pair> pairs() {
        List<String> machines = findings.stream().map(Finding::machine).toList();
        return site.layout().neverBothOff().stream()
                .filter(pair -> machines.contains(pair.one()) && machines.contains(pair.other()))
                .map(pair -> new VisitWork.Pair(pair.one(), pair.other())).toList();
    }

    private List<Set<String>> sets() {
        List<String> machines = findings.stream().map(Finding::machine).toList();
        return site.layout().neverAllOff().stream().filter(machines::containsAll).toList();
    }

    /** The break that everybody gets on a visit. */
    public static Optional<Crew.Rest> rest(LaborRates labor) {
        return labor.crew().rest().map(rest -> new Crew.Rest(rest.after(), rest.minutes()));
    }

    private Stream<MachineTask> tasks(Finding finding) {
        Map<Task, Set<Chemistry>> inside = rates.inside(rates.done(finding));
        return finding.tasks().stream().filter(done -> done.outcome().isDone()).map(done -> {
            Task task = rates.task(done.task()).orElseThrow();
            return task(task, finding.machine(), needs(task, inside.getOrDefault(task, Set.of())), done);
        });
    }

    /** What the rates say, and what follows from what is in the machine. */
    private static Set<Qualification> needs(Task task, Set<Chemistry> inside) {
        Set<Qualification> needs = EnumSet.noneOf(Qualification.class);
        needs.addAll(task.needs());
        if (inside.contains(Chemistry.ACID)) {
            needs.add(Qualification.ACID);
        }
        return needs;
    }

    /** What a task is called in a timetable. */
    static String name(Task task) {
        boolean flushes = task.procedure().flushes() > 0;
        return task.procedure().timer().isPresent() ? POUR : flushes ? FLUSH : task.id();
    }

    /** How long the chemical of a task circulates: as the site says for the machine, or else as the task says; empty for none. */
    static Optional<Procedure.Timer> timer(Site site, Task task, String machine) {
        return own(site, task, machine).map(each -> new Procedure.Timer(each.least(), each.most()))
                .or(task.procedure()::timer);
    }

    private static Optional<Layout.Circulation> own(Site site, Task task, String machine) {
        return task.procedure().timer().isPresent()
                ? site.layout().circulations().stream().filter(each -> each.machine().equals(machine)).findFirst()
                : Optional.empty();
    }

    /** Whether something is done that nobody does alone. */
    boolean isAccompanied() {
        return rates.labor().crew().onRoof() != CrewRules.OnRoof.ALONE
                && findings.stream().anyMatch(finding -> rates.done(finding).stream().anyMatch(task -> {
                    Machine machine = site.machine(finding.machine()).orElseThrow();
                    return mayFall(task, machine, task.stateAt(machine));
                }));
    }

    private boolean mayFall(Task task, Machine machine, MachineState state) {
        return Hazards.of(site, machine).contains(Hazard.FALL)
                || Hazards.of(task, machine, state, Set.of()).contains(Hazard.FALL);
    }

    private MachineTask task(Task task, String machine, Set<Qualification> needs, Finding.TaskDone done) {
        MachineState state = task.stateAt(site.machine(machine).orElseThrow());
        CrewRules.OnRoof rule = mayFall(task, site.machine(machine).orElseThrow(), state)
                ? rates.labor().crew().onRoof()
                : CrewRules.OnRoof.ALONE;
        int people = rule == CrewRules.OnRoof.TOGETHER ? Math.max(2, task.people()) : task.people();
        return new MachineTask(machine, name(task), state, task.order(), people, needs, task.attended(),
                own(site, task, machine).isPresent() ? 0 : task.unattended(), timer(site, task, machine),
                task.procedure().flushes() > 0, task.dust(),
                rule == CrewRules.OnRoof.ACCOMPANIED, done.place());
    }
}
