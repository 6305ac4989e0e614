package icequill.forecast;

import icequill.problem.Check;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What a choice leads to over some months: the calls of each cause and what they cost. Everything is conditional on the figures
 * that went in.
 */
public final class Forecast {

    private static final double YEAR = 12;

    private final Choice choice;
    private final double months;
    private final Map<Cause, Counts> counts;

    private Forecast(Choice choice, double months, Map<Cause, Counts> counts) {
        this.choice = choice;
        this.months = months;
        this.counts = counts;
    }

    /**
     * The forecast for some machines, whose stops do not depend on each other.
     *
     * @param months of the horizon, above 0; a horizon of years is one run, not a sum of first years
     */
    public static Forecast of(List<MachineRisk> machines, Choice choice, StopPolicy policy, double months) {
        Check.that(months > 0 && Double.isFinite(months), "a horizon of " + months + " months");
        Map<Cause, Counts> counts = new EnumMap<>(Cause.class);
        counts.put(Cause.RANDOM,
                Counts.poisson(machines.stream().mapToDouble(MachineRisk::randomAYear).sum() * months / YEAR));
        counts.put(Cause.CONDENSER, sum(machines.stream().flatMap(machine -> machine.condenser().stream()
                .map(clock -> new Side(clock, machine.monthsSinceBrushed()))).toList(), policy, months,
                choice.condenser()));
        counts.put(Cause.WATER, sum(
                machines.stream().map(machine -> new Side(machine.water(), machine.monthsSinceCleaned())).toList(),
                policy, months, choice.water()));
        return new Forecast(choice, months, counts);
    }

    /** One side of a machine: the clock it runs by, and its age. */
    private record Side(DirtClock clock, double age) {}

    /** Sides that are alike are counted once. */
    private static Counts sum(List<Side> sides, StopPolicy policy, double months, Care care) {
        return sides.stream().distinct()
                .map(side -> new StopCounts(side.clock(), policy, side.age()).over(months, care)
                        .times((int) sides.stream().filter(side::equals).count()))
                .reduce(Counts.NONE, Counts::plus);
    }

    /** The calls of a cause. */
    public Counts calls(Cause cause) {
        return Objects.requireNonNull(counts.get(cause));
    }

    /** All calls. */
    public Counts calls() {
        return counts.values().stream().reduce(Counts.NONE, Counts::plus);
    }

    /** What is paid over the horizon whatever happens, in minor units, the rest of a year in proportion, rounded half up. */
    public long planned() {
        return Math.round(choice.planned() * months / YEAR);
    }

    /** What calls cost, without what is planned. */
    public ChargeLaw charges() {
        return ChargeLaw.of(parts(Optional.empty(), 1), 0);
    }

    /** What calls cost and what is planned. */
    public ChargeLaw total() {
        return ChargeLaw.of(parts(Optional.empty(), 1), planned());
    }

    private List<ChargeLaw.Part> parts(Optional<Cause> without, int sign) {
        List<ChargeLaw.Part> parts = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            if (without.filter(cause::equals).isEmpty()) {
                parts.add(new ChargeLaw.Part(calls(cause), choice.calls().of(cause).stream()
                        .map(kind -> new ChargeLaw.Amount(kind.share(), sign * kind.charge())).toList()));
            }
        }
        return parts;
    }

    /**
     * The chance that this choice costs less in all than another over the same months for the same machines. Both share their
     * random faults, since the same pump fails either way; the rest is independent.
     */
    public double chanceCheaperThan(Forecast other) {
        Check.that(months == other.months, "horizons differ: " + months + ", " + other.months);
        List<CallKind> own = choice.calls().of(Cause.RANDOM);
        List<CallKind> others = other.choice.calls().of(Cause.RANDOM);
        Check.that(own.size() == others.size(), "random faults of different kinds");
        List<ChargeLaw.Amount> differences = new ArrayList<>();
        for (int i = 0; i < own.size(); i++) {
            differences.add(new ChargeLaw.Amount(own.get(i).share(), own.get(i).charge() - others.get(i).charge()));
        }
        List<ChargeLaw.Part> parts = new ArrayList<>(parts(Optional.of(Cause.RANDOM), 1));
        parts.addAll(other.parts(Optional.of(Cause.RANDOM), -1));
        parts.add(new ChargeLaw.Part(calls(Cause.RANDOM), differences));
        return ChargeLaw.of(parts, planned() - other.planned()).chanceOfLessThan(0);
    }
}
