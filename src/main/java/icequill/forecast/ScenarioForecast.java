package icequill.forecast;

import icequill.forecast.charges.ChargeDistribution;
import icequill.forecast.charges.ChargePart;
import icequill.forecast.charges.Difference;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.CountDistribution;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.StopCounts;
import icequill.forecast.stops.StopPolicy;
import icequill.forecast.stops.Stretches;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/** What a choice leads to when it is known how bad the site is, so that its machines do not depend on each other. */
final class ScenarioForecast {

    private static final double YEAR = 12;
    /** Below it a rest of a year is what rounding left. */
    private static final double NOTHING = 1e-9;

    private final MaintenancePolicy choice;
    private final double months;
    private final Map<Cause, CountDistribution> counts;
    private final YearlyCharges charged;
    /** Calls that are not included in what is planned; all of them where none is. */
    private final CountDistribution paid;
    private final ChargeDistribution dirt;
    private final ChargeDistribution charges;
    /** Those of the horizon where calls are included; none otherwise. */
    private final List<HorizonYear> years;

    private ScenarioForecast(MaintenancePolicy choice, double months, Map<Cause, CountDistribution> counts,
            YearlyCharges charged, List<HorizonYear> years) {
        this.years = years;
        this.paid = years.stream().map(year -> year.calls().beyond(choice.included())).reduce(CountDistribution.NONE,
                CountDistribution::plus);
        this.choice = choice;
        this.months = months;
        this.counts = counts;
        this.charged = charged;
        this.dirt = ChargeDistribution.of(List.of(part(Cause.CONDENSER), part(Cause.WATER)));
        this.charges = ChargeDistribution.of(paidParts());
    }

    /** As {@link Forecast#of(List, MaintenancePolicy, StopPolicy, double, PriceTerms)}, but for what the policy says of machines together. */
    static ScenarioForecast of(List<MachineRisk> machines, MaintenancePolicy choice, StopPolicy policy, double months,
            PriceTerms terms) {
        List<MachineSide> condensers = machines.stream().flatMap(machine -> MachineSide.condenser(machine).stream())
                .toList();
        List<MachineSide> waters = machines.stream().map(MachineSide::water).toList();
        DoubleUnaryOperator random = until -> machines.stream().mapToDouble(machine -> machine.randomUntil(until))
                .sum();
        YearlyCharges charged = YearlyCharges.of(terms, months, Map.of(Cause.RANDOM, random,
                Cause.CONDENSER, until -> MachineSide.stops(condensers, policy, until, choice.condenser()).mean(),
                Cause.WATER,
                until -> MachineSide.stops(waters, policy, until, choice.water()).mean()));
        Map<Cause, CountDistribution> counts = new EnumMap<>(Cause.class);
        counts.put(Cause.RANDOM, CountDistribution.poisson(random.applyAsDouble(months)));
        counts.put(Cause.CONDENSER, MachineSide.stops(condensers, policy, months, choice.condenser()));
        counts.put(Cause.WATER, MachineSide.stops(waters, policy, months, choice.water()));
        List<HorizonYear> years = new ArrayList<>();
        for (double from = 0; choice.included() > 0 && from < months - NOTHING; from += YEAR) {
            double begins = from;
            double until = Math.min(months, from + YEAR);
            years.add(new HorizonYear(month -> random.applyAsDouble(begins + month) - random.applyAsDouble(begins),
                    HorizonYear.begun(condensers, choice.condenser(), policy, from, until),
                    choice.condenser().within(from, until),
                    HorizonYear.begun(waters, choice.water(), policy, from, until), choice.water().within(from, until),
                    policy,
                    until - from));
        }
        return new ScenarioForecast(choice, months, counts, charged, years);
    }

    /** A problem for each side that would stop so often that a figure must be wrong. */
    static List<Problem> problems(List<MachineRisk> machines, CleaningSchedule water, CleaningSchedule condenser,
            StopPolicy policy,
            double months, Place place) {
        Problems problems = new Problems();
        for (MachineRisk machine : machines) {
            MachineSide.condenser(machine)
                    .ifPresent(side -> check("condenser", condenser, side, policy, months, place, problems));
            check("water side", water, MachineSide.water(machine), policy, months, place, problems);
        }
        return problems.list();
    }

    private static void check(String what, CleaningSchedule care, MachineSide side, StopPolicy policy, double months,
            Place place,
            Problems problems) {
        if (StopCounts.isAbsurd(side.clock(), policy, side.age(), Stretches.of(care, side.season(), months))) {
            problems.add(Code.NOT_ALLOWED, place,
                    "a " + what + " with a clock of " + side.clock().scale()
                            + " months would stop hundreds of times in "
                            + months + " months",
                    "a slower clock, a shorter horizon, or calls that clean the side they are for");
        }
    }

    CountDistribution calls(Cause cause) {
        return Objects.requireNonNull(counts.get(cause));
    }

    CountDistribution calls() {
        return counts.values().stream().reduce(CountDistribution.NONE, CountDistribution::plus);
    }

    /** What is paid over the horizon whatever happens, in minor units, the rest of a year in proportion, rounded once. */
    long planned() {
        return charged.planned(choice);
    }

    /** What calls cost, without what is planned and without calls that are included in it. */
    ChargeDistribution charges() {
        return charges;
    }

    /** What calls cost and what is planned. */
    ChargeDistribution total() {
        return charges().plus(planned());
    }

    /** What calls cost that are paid for. Where some are included, each call after those draws its cause by what is expected of causes there. */
    private List<ChargePart> paidParts() {
        if (choice.included() == 0) {
            return Stream.of(Cause.values()).map(this::part).toList();
        }
        Map<Cause, Double> after = new EnumMap<>(Cause.class);
        years.forEach(year -> year.after(choice.included())
                .forEach((cause, calls) -> after.merge(cause, calls, Double::sum)));
        double all = after.values().stream().mapToDouble(Double::doubleValue).sum();
        return List.of(new ChargePart(paid, all == 0
                ? List.of()
                : after.entrySet().stream().flatMap(expected -> amounts(expected.getKey()).stream()
                        .map(amount -> new ChargePart.Amount(amount.share() * expected.getValue() / all,
                                amount.minor())))
                        .toList()));
    }

    private ChargePart part(Cause cause) {
        return new ChargePart(calls(cause), amounts(cause));
    }

    private List<ChargePart.Amount> amounts(Cause cause) {
        return charged.amounts(cause, choice.calls().of(cause));
    }

    /** As {@link Forecast#chanceCheaperThan}. */
    double chanceCheaperThan(ScenarioForecast other) {
        if (choice.included() > 0 || other.choice.included() > 0) {
            return isNeverDearerThan(other)
                    ? 1
                    : other.isNeverDearerThan(this) ? 0 : total().chanceOfLessThan(other.total());
        }
        List<ChargePart> own = new ArrayList<>();
        List<ChargePart> others = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            Difference difference = Difference.of(amounts(cause), other.amounts(cause));
            if (cause == Cause.RANDOM
                    || (choice.caresLike(other.choice, cause, months) && difference.isOneSided())) {
                difference.dearer(calls(cause)).ifPresent(own::add);
                difference.cheaper(calls(cause)).ifPresent(others::add);
            } else {
                own.add(part(cause));
                others.add(other.part(cause));
            }
        }
        return law(own).plus(planned()).chanceOfLessThan(other.law(others).plus(other.planned()));
    }

    /** Whether the same care is cheaper beforehand and never dearer afterwards. */
    private boolean isNeverDearerThan(ScenarioForecast other) {
        return planned() < other.planned() && choice.included() >= other.choice.included()
                && Stream.of(Cause.values()).allMatch(cause -> choice.caresLike(other.choice, cause, months)
                        && Difference.of(amounts(cause), other.amounts(cause)).isNeverDearer());
    }

    private ChargeDistribution law(List<ChargePart> parts) {
        return parts.equals(List.of(part(Cause.CONDENSER), part(Cause.WATER)))
                ? dirt
                : ChargeDistribution.of(parts);
    }
}
