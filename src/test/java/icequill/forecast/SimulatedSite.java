package icequill.forecast;

import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.StopPolicy;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleSupplier;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * Years of a site drawn by chance, as a second opinion on what is computed. It walks through each side's months one stop after another
 * and shares nothing with the program but the input.
 */
final class SimulatedSite {

    private static final double SHORT = 1e-9;

    private final Random random;
    private final List<MachineRisk> machines;
    private final StopPolicy policy;
    private final double months;
    /** Stops of the last interval that was drawn. */
    private int drawn;

    /** One drawn horizon: calls and charges of two choices that share their random faults. */
    record Draw(int calls, long charges, long otherTotal, long ownTotal) {}

    SimulatedSite(Random random, List<MachineRisk> machines, StopPolicy policy, double months) {
        this.random = random;
        this.machines = machines;
        this.policy = policy;
        this.months = months;
    }

    /** A site drawn by chance: one to four machines, ages up to 18 months, some with worn cleanings, some cooled by water. */
    static List<MachineRisk> machines(Random random, StopPolicy policy) {
        List<MachineRisk> machines = new ArrayList<>();
        int number = 1 + random.nextInt(4);
        for (int i = 0; i < number; i++) {
            machines.add(new MachineRisk(0.8 * random.nextDouble(),
                    random.nextInt(4) == 0 ? Optional.empty() : Optional.of(clock(random, policy)),
                    18 * random.nextDouble(), clock(random, policy),
                    random.nextBoolean() ? 0 : 18 * random.nextDouble()));
        }
        return machines;
    }

    /** Where nothing but cleanings takes dirt away, steep clocks would stop hundreds of times in five years. */
    private static FoulingLife clock(Random random, StopPolicy policy) {
        return policy.cleans() > 0
                ? new FoulingLife(1.3 + 2.7 * random.nextDouble(), 8 + 22 * random.nextDouble())
                : new FoulingLife(1.3 + random.nextDouble(), 14 + 22 * random.nextDouble());
    }

    /** Never, or every so many months, which need not divide a year. */
    static CleaningSchedule care(Random random) {
        double[] intervals = {Double.POSITIVE_INFINITY, 1.5, 3, 4, 5, 6, 7, 12, 18};
        double every = intervals[random.nextInt(intervals.length)];
        return Double.isInfinite(every)
                ? CleaningSchedule.NEVER
                : new CleaningSchedule(every, random.nextInt(3) == 0 ? 0.6 : 1);
    }

    /** Two or three kinds of charges in cents for each cause. */
    static CallTable table(Random random) {
        return new CallTable(Map.of(Cause.RANDOM, kinds(random), Cause.CONDENSER, kinds(random), Cause.WATER,
                kinds(random)));
    }

    /** The same kinds as another table at other charges: often all dearer. */
    static CallTable like(CallTable table, Random random) {
        int dearer = random.nextBoolean() ? 20000 : 0;
        Map<Cause, List<CallKind>> kinds = new EnumMap<>(Cause.class);
        table.kinds().forEach((cause, own) -> kinds.put(cause, own.stream()
                .map(kind -> new CallKind(kind.share(), dearer + 15000 + 2L * random.nextInt(15000))).toList()));
        return new CallTable(kinds);
    }

    private static List<CallKind> kinds(Random random) {
        double first = 0.2 + 0.5 * random.nextDouble();
        return List.of(new CallKind(first, 15000 + random.nextInt(5000)),
                new CallKind(1 - first, 25000 + 2 * random.nextInt(15000)));
    }

    /** Calls up to a month that each come some time after the one before. */
    static int renewals(DoubleSupplier life, double until) {
        int stops = 0;
        double at = life.getAsDouble();
        while (at < until) {
            stops++;
            at += life.getAsDouble();
        }
        return stops;
    }

    Draw draw(MaintenancePolicy own, MaintenancePolicy other) {
        long ownRandom = 0;
        long otherRandom = 0;
        int faults = 0;
        for (MachineRisk machine : machines) {
            double gap = 12 / machine.randomAYear();
            int calls = renewals(() -> -gap * Math.log(1 - random.nextDouble()), months);
            for (int i = 0; i < calls; i++) {
                int kind = kind(own.calls().of(Cause.RANDOM));
                ownRandom += own.calls().of(Cause.RANDOM).get(kind).charge();
                otherRandom += other.calls().of(Cause.RANDOM).get(kind).charge();
            }
            faults += calls;
        }
        long[] ownDirt = new long[2];
        long[] otherDirt = new long[2];
        for (MachineRisk machine : machines) {
            dirt(Cause.WATER, own, other, care -> stops(machine.water(), machine.monthsSinceCleaned(), care),
                    ownDirt, otherDirt);
            machine.condenser().ifPresent(clock -> dirt(Cause.CONDENSER, own, other,
                    care -> stops(clock, machine.monthsSinceBrushed(), care), ownDirt, otherDirt));
        }
        long years = Math.round(months / 12);
        return new Draw(faults + (int) ownDirt[0], ownRandom + ownDirt[1],
                otherRandom + otherDirt[1] + years * other.planned(), ownRandom + ownDirt[1] + years * own.planned());
    }

    /** The same stops for both where they care alike and one of them is never the dearer one. */
    private void dirt(Cause cause, MaintenancePolicy own, MaintenancePolicy other,
            ToIntFunction<CleaningSchedule> stops, long[] ownSums,
            long[] otherSums) {
        CleaningSchedule care = cause == Cause.WATER ? own.water() : own.condenser();
        CleaningSchedule otherCare = cause == Cause.WATER ? other.water() : other.condenser();
        List<CallKind> kinds = own.calls().of(cause);
        List<CallKind> otherKinds = other.calls().of(cause);
        long dearer = IntStream.range(0, kinds.size())
                .filter(i -> kinds.get(i).charge() > otherKinds.get(i).charge()).count();
        boolean shared = care.equals(otherCare) && (dearer == 0 || dearer == kinds.size());
        int calls = stops.applyAsInt(care);
        ownSums[0] += calls;
        for (int i = 0; i < calls; i++) {
            int kind = kind(kinds);
            ownSums[1] += kinds.get(kind).charge();
            otherSums[1] += shared ? otherKinds.get(kind).charge() : 0;
        }
        if (!shared) {
            otherSums[1] += charges(otherKinds, stops.applyAsInt(otherCare));
        }
    }

    private long charges(List<CallKind> kinds, int calls) {
        long sum = 0;
        for (int i = 0; i < calls; i++) {
            sum += kinds.get(kind(kinds)).charge();
        }
        return sum;
    }

    private int kind(List<CallKind> kinds) {
        double left = random.nextDouble();
        int kind = 0;
        while (kind < kinds.size() - 1 && left >= kinds.get(kind).share()) {
            left -= kinds.get(kind).share();
            kind++;
        }
        return kind;
    }

    private int stops(FoulingLife clock, double age, CleaningSchedule care) {
        double clean = age;
        double at = 0;
        int stops = 0;
        for (int turn = 0; months - at > SHORT; turn++) {
            for (double next : care.at().isEmpty() ? List.of(months) : care.at()) {
                double end = Math.min(months, turn == 0 ? next : turn * care.turn() + next);
                clean = run(clock, clean, end - at);
                stops += drawn;
                at = end;
                clean *= months - at > SHORT ? 1 - care.restores() : 1;
            }
        }
        return stops;
    }

    /** Within one interval: the next stop comes when the hazard since the last has grown by an exponential number. */
    private double run(FoulingLife clock, double age, double length) {
        drawn = 0;
        double left = length;
        double run = age;
        while (true) {
            double hazard = Math.pow(run / clock.scale(), clock.shape()) - Math.log(1 - random.nextDouble());
            double life = clock.scale() * Math.pow(hazard, 1 / clock.shape()) - run;
            if (life >= left) {
                return run + left;
            }
            drawn++;
            left -= life;
            run = random.nextDouble() < policy.cleans() ? 0 : run + life;
        }
    }
}
