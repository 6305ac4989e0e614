package icequill.plans;

import icequill.agreement.CatchUp;
import icequill.document.CatchUpPrice;
import icequill.document.CatchUpPrice.Found;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.party.Machine;
import icequill.party.Wording;
import icequill.pricer.AgreementPricer;
import icequill.pricer.ExtraWork;
import icequill.pricer.PricedSlot;
import icequill.pricer.StaffedVisit;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.request.Survey;
import icequill.tax.TaxedVisit;
import icequill.visits.ChargeSheet;
import icequill.work.Task;
import icequill.work.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Prices what a survey of neglected machines adds to the first visit of a plan: that visit with the work, less the same visit
 * without it, so that neither the service call nor the least time billed counts twice.
 */
public record CatchUpAssembly(PricedPlan plan, Survey survey) {

    /** The price, or which names of the survey are unknown. */
    public Validated<CatchUpPrice> price() {
        Problems problems = new Problems();
        List<Found> found = found(problems);
        return problems.or(() -> found).then(valid -> usual()
                .then(usual -> firstVisit().map(first -> assembled(valid, usual, first))));
    }

    /** What it adds for the customer and for the shop, or which names of the survey are unknown. */
    public Validated<CatchUpAmounts> ahead() {
        Problems problems = new Problems();
        found(problems);
        return problems.or(() -> problems).then(valid -> usual()).then(usual -> firstVisit().map(PricedSlot::priced)
                .map(first -> new CatchUpAmounts(first.net().subtract(usual.priced().net()),
                        first.cost().subtract(usual.priced().cost()))));
    }

    private List<Found> found(Problems problems) {
        return survey.machines().stream().flatMap(condition -> found(condition, problems).stream()).toList();
    }

    /** The first visit without the work. */
    private Validated<PricedSlot> usual() {
        return visit(plan.staffedVisit(0), List.of());
    }

    private Validated<PricedSlot> firstVisit() {
        List<ExtraWork> extra = survey.machines().stream().flatMap(condition -> machine(condition).stream()
                .flatMap(machine -> tasks(condition, machine).stream()
                        .map(task -> new ExtraWork(machine.id(), task.id()))))
                .toList();
        StaffedVisit usual = plan.staffedVisit(0);
        int more = extra.stream().mapToInt(work -> minutes(rates().task(work.task()).orElseThrow())).sum();
        StaffedVisit longer = new StaffedVisit(usual.visit(), usual.crew().stream()
                .map(person -> new StaffedVisit.Person(person.grade(), person.minutes() + share(more))).toList(),
                usual.modifiers(), usual.arrive());
        return visit(longer, extra);
    }

    private Validated<PricedSlot> visit(StaffedVisit staffed, List<ExtraWork> extra) {
        return AgreementPricer.visit(staffed, extra, plan.setting().site(), rates(), plan.setting().shop().zone());
    }

    /** The crew divides the additional work; the odd minute is somebody's. */
    private int share(int minutes) {
        int people = plan.staffedVisit(0).crew().size();
        return (minutes + people - 1) / people;
    }

    private static int minutes(Task task) {
        return task.attended() + task.unattended();
    }

    private CatchUpPrice assembled(List<Found> found, PricedSlot without, PricedSlot first) {
        MonetaryAmount usual = without.priced().net();
        MonetaryAmount whole = first.priced().net();
        Explanation how = Explanation.of(Figure.price(whole, "").minus(Figure.price(usual, "")),
                Phrase.of("reason.catch-up"));
        PlanSetting setting = plan.setting();
        PlanYearAssembly year = new PlanYearAssembly(plan);
        TaxedVisit taxed = year.taxed(first);
        MonetaryAmount tax = taxed.tax().subtract(year.taxed(without).tax());
        return new CatchUpPrice(survey.date(), found, usual, new ChargeSheet(setting.site(), taxed).lines(), whole,
                how.amount(rates().currency()), how, tax);
    }

    private Rates rates() {
        return plan.setting().rates();
    }

    private Optional<Machine> machine(Survey.Condition condition) {
        return plan.setting().site().machine(condition.machine().id());
    }

    private Optional<Found> found(Survey.Condition condition, Problems problems) {
        List<String> machines = plan.setting().site().machines().stream().map(Machine::id).toList();
        if (!PlanSetting.isKnown(condition.machine(), machines, problems)) {
            return Optional.empty();
        }
        for (Visit.Named named : condition.found()) {
            if (rates().plans().catchUp(named.id()).isEmpty()) {
                problems.add(Problem.unknownName(named.place(), "finding", named.id(),
                        rates().plans().catchUps().stream().map(CatchUp::id).toList()));
            }
        }
        List<Wording> names = catchUps(condition).stream().map(CatchUp::name).toList();
        return machine(condition).map(machine -> new Found(machine.where(), condition.lastCleaned(), names,
                tasks(condition, machine).stream().map(Task::name).toList(), condition.note()));
    }

    private List<CatchUp> catchUps(Survey.Condition condition) {
        return condition.found().stream().flatMap(named -> rates().plans().catchUp(named.id()).stream()).toList();
    }

    /** What is done once more to a machine, in the order of a visit; a task that two findings ask for is done for each. */
    private List<Task> tasks(Survey.Condition condition, Machine machine) {
        List<Task> tasks = new ArrayList<>();
        for (Task task : rates().tasks()) {
            long times = catchUps(condition).stream().filter(catchUp -> catchUp.tasks().contains(task.id())).count();
            for (int i = 0; i < times && task.suits(machine); i++) {
                tasks.add(task);
            }
        }
        return tasks;
    }
}
