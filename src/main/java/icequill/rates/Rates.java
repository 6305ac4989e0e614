package icequill.rates;

import icequill.agreement.Plans;
import icequill.agreement.Tier;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.work.Band;
import icequill.work.ChemicalOrder;
import icequill.work.Chemistry;
import icequill.work.Finding;
import icequill.work.Task;
import icequill.work.Visit;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.money.CurrencyUnit;

/**
 * All prices of one day, plain: nothing in them depends on a date any more.
 *
 * @param agreed which of them are not the shop's own
 * @param included what of them is tax; empty where they are before tax
 * @param refrigerants and the law about them
 */
public record Rates(CurrencyUnit currency, LaborRates labor, ServiceCallRates serviceCall, List<Material> materials,
        List<Task> tasks, Adjustments adjustments, Plans plans,
        Agreed agreed, Optional<IncludedTax> included, RefrigerantRules refrigerants) {

    public Rates {
        materials = List.copyOf(materials);
        tasks = List.copyOf(tasks);
    }

    /** All the shop's own, before tax. */
    public Rates(CurrencyUnit currency, LaborRates labor, ServiceCallRates serviceCall, List<Material> materials,
            List<Task> tasks, Adjustments adjustments, Plans plans) {
        this(currency, labor, serviceCall, materials, tasks, adjustments, plans, Agreed.NOTHING,
                Optional.empty(), RefrigerantRules.NONE);
    }

    /** The same with one labor band at all hours. */
    public Rates within(Band band) {
        return new Rates(currency, labor.within(band), serviceCall, materials, tasks, adjustments, plans, agreed,
                included, refrigerants);
    }

    /** The same without discounts of rate sheets: a plan has its own. */
    public Rates withoutAgreedDiscounts() {
        return new Rates(currency, labor, serviceCall, materials, tasks, adjustments, plans,
                new Agreed(agreed.names(), List.of()), included, refrigerants);
    }

    /** The same as prices that are shown with their tax. */
    public Rates including(IncludedTax tax) {
        return new Rates(currency, labor, serviceCall, materials, tasks, adjustments, plans, agreed, Optional.of(tax),
                refrigerants);
    }

    /** The same with what is known of refrigerants. */
    Rates knowing(RefrigerantRules known) {
        return new Rates(currency, labor, serviceCall, materials, tasks, adjustments, plans, agreed, included, known);
    }

    public Optional<Material> material(String id) {
        return materials.stream().filter(material -> material.id().equals(id)).findFirst();
    }

    /** The tasks of a finding that were carried out, in the order of a visit. */
    public List<Task> done(Finding finding) {
        return finding.tasks().stream().filter(done -> done.outcome().isDone())
                .flatMap(done -> task(done.task()).stream()).sorted(Comparator.comparingInt(Task::order)).toList();
    }

    /** What the chemicals are that a task doses, by their labels. */
    public Set<Chemistry> chemistry(Task task) {
        return task.doses().stream().flatMap(dose -> material(dose.material()).stream())
                .flatMap(material -> material.label().stream()).map(Label::chemistry).collect(Collectors.toSet());
    }

    /**
     * What is in a machine during each of its tasks: what the task doses, and what went in before and is not flushed out yet.
     *
     * @param inOrder all tasks at one machine
     */
    public Map<Task, Set<Chemistry>> inside(List<Task> inOrder) {
        Map<Task, Set<Chemistry>> during = new HashMap<>();
        Set<Chemistry> inside = EnumSet.noneOf(Chemistry.class);
        int flushes = 0;
        for (Task task : inOrder) {
            Set<Chemistry> dosed = chemistry(task);
            flushes = dosed.isEmpty() ? flushes : 0;
            inside.addAll(dosed);
            during.put(task, Set.copyOf(inside));
            flushes += task.procedure().flushes();
            if (flushes >= ChemicalOrder.FLUSHES) {
                inside.clear();
            }
        }
        return during;
    }

    /** The tier of a name, or that there is none. */
    public Validated<Tier> tier(Visit.Named named) {
        return plans.tier(named.id()).map(Validated::valid)
                .orElseGet(() -> Validated.invalid(Problem.unknownName(named.place(), "tier", named.id(),
                        plans.tiers().stream().map(Tier::id).toList())));
    }

    public Optional<Task> task(String id) {
        return tasks.stream().filter(task -> task.id().equals(id)).findFirst();
    }
}
