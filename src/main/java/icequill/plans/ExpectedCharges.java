package icequill.plans;

import icequill.agreement.Tier;
import icequill.forecast.CallKind;
import icequill.forecast.CallTable;
import icequill.forecast.Cause;
import icequill.forecast.inputs.ExpectedCall;
import icequill.forecast.inputs.ExpectedCalls;
import icequill.forecast.inputs.ForecastRates;
import icequill.money.Amounts;
import icequill.money.MinorUnits;
import icequill.party.Machine;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.party.Wording;
import icequill.pricer.PricedVisit;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.work.Band;
import icequill.work.Outcome;
import icequill.work.Task;
import icequill.work.VisitLine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Prices the kinds of calls that are expected, with the work that sets dirt back. Where machines take different doses, calls are
 * taken to be spread evenly over them.
 *
 * @param site with those machines that are looked after
 * @param day whose prices hold
 */
public record ExpectedCharges(Shop shop, Site site, Rates prices, ForecastRates rates, LocalDate day) {

    private static final double HUNDRED = 100;

    /**
     * A kind of call with its price, at one machine; the shares of a cause's calls add up to 1.
     *
     * @param cleans whether its work takes dirt away
     */
    public record PricedKind(Cause cause, Wording name, double share, boolean cleans, PricedVisit priced) {

        long minor() {
            return MinorUnits.of(priced.net());
        }
    }

    /** What calls cost under one choice. */
    public record Charges(List<PricedKind> kinds) {

        public CallTable table() {
            Map<Cause, List<CallKind>> table = new EnumMap<>(Cause.class);
            for (Cause cause : Cause.values()) {
                List<CallKind> own = kinds.stream().filter(kind -> kind.cause() == cause)
                        .map(kind -> new CallKind(kind.share(), kind.minor())).toList();
                // A cause that no machine of the site has brings no calls, whatever they would cost.
                table.put(cause, own.isEmpty() ? List.of(new CallKind(1, 0)) : own);
            }
            return new CallTable(table);
        }

        /** What one call of a cause is charged on average, in minor units. */
        public double meanCharge(Cause cause) {
            return kinds.stream().filter(kind -> kind.cause() == cause)
                    .mapToDouble(kind -> kind.share() * kind.minor()).sum();
        }

        /** What one call of a cause costs the shop on average, in major units. */
        public double meanCost(Cause cause) {
            return kinds.stream().filter(kind -> kind.cause() == cause)
                    .mapToDouble(kind -> kind.share() * Amounts.number(kind.priced().cost()).doubleValue()).sum();
        }
    }

    /** Priced at list, or with the discounts of a tier. */
    public Validated<Charges> charges(Optional<Tier> tier) {
        Problems problems = new Problems();
        List<PricedKind> kinds = new ArrayList<>();
        List<Machine> brushed = site.machines().stream().filter(SiteRisks::isBrushed).toList();
        for (ExpectedCall kind : rates.calls().random().kinds()) {
            price(kind, Optional.empty(), tier, problems)
                    .ifPresent(priced -> kinds.add(new PricedKind(Cause.RANDOM, kind.name(),
                            kind.share().doubleValue(), false, priced)));
        }
        atMachines(Cause.CONDENSER, rates.calls().condenser(), brushed, tier, problems, kinds);
        atMachines(Cause.WATER, rates.calls().water(), site.machines(), tier, problems, kinds);
        return problems.or(() -> new Charges(kinds));
    }

    private void atMachines(Cause cause, ExpectedCalls calls, List<Machine> machines, Optional<Tier> tier,
            Problems problems, List<PricedKind> kinds) {
        for (Machine machine : machines) {
            Optional<HypotheticalCall.AtMachine> work = resets(calls, machine, problems);
            double cleans = rates.callsThatClean().value().doubleValue() / HUNDRED;
            for (ExpectedCall kind : calls.kinds()) {
                double share = kind.share().doubleValue() / machines.size();
                if (cleans > 0) {
                    price(kind, work, tier, problems).ifPresent(priced -> kinds
                            .add(new PricedKind(cause, kind.name(), share * cleans, true, priced)));
                }
                if (cleans < 1) {
                    price(kind, Optional.empty(), tier, problems).ifPresent(priced -> kinds
                            .add(new PricedKind(cause, kind.name(), share * (1 - cleans), false, priced)));
                }
            }
        }
    }

    /** The work that sets the dirt of a machine back. */
    private Optional<HypotheticalCall.AtMachine> resets(ExpectedCalls calls, Machine machine, Problems problems) {
        List<Task> tasks = new ArrayList<>();
        for (String id : calls.resets()) {
            Optional<Task> task = prices.task(id);
            if (task.isEmpty()) {
                problems.add(Problem.unknownName(rates.place(), "task", id,
                        prices.tasks().stream().map(Task::id).toList()));
            }
            task.filter(found -> found.suits(machine)).ifPresent(tasks::add);
        }
        return tasks.isEmpty() ? Optional.empty() : Optional.of(new HypotheticalCall.AtMachine(machine.id(), tasks));
    }

    private Optional<PricedVisit> price(ExpectedCall kind, Optional<HypotheticalCall.AtMachine> work,
            Optional<Tier> tier,
            Problems problems) {
        List<Band> bands = prices.labor().bands();
        Optional<Band> band = bands.stream().filter(found -> found.id().equals(kind.band())).findFirst();
        if (band.isEmpty()) {
            problems.add(Problem.unknownName(kind.place(), "labor band", kind.band(),
                    bands.stream().map(Band::id).toList()));
            return Optional.empty();
        }
        HypotheticalCall call = new HypotheticalCall(shop, site, prices);
        HypotheticalCall.Work what = new HypotheticalCall.Work(kind.minutes(), kind.on(), kind.parts().stream()
                .<VisitLine>map(part -> new VisitLine.MaterialUsed(part.material(), part.amount(), Optional.empty(),
                        Outcome.CHARGED, part.place()))
                .toList(), work);
        return problems.take(tier.map(found -> call.price(day, band.get(), what, found))
                .orElseGet(() -> call.price(day, band.get(), what)));
    }
}
