package icequill.bench;

import icequill.forecast.CallKind;
import icequill.forecast.CallTable;
import icequill.forecast.Cause;
import icequill.forecast.Forecast;
import icequill.forecast.MaintenancePolicy;
import icequill.forecast.charges.MixedDistribution;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.StopPolicy;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * How long four choices take over five years: expected calls, mean, spread and quantiles of the charges, and the chance of each that
 * it is cheaper than paying per call. No two machines have the same age; they have two kinds of clocks.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class ForecastBenchmark {

    private static final double FIVE_YEARS = 60;

    @Param({"1", "6", "200"})
    private int machines;

    private List<MachineRisk> risks = List.of();

    @Setup
    public void site() {
        List<MachineRisk> all = new ArrayList<>();
        for (int i = 0; i < machines; i++) {
            FoulingLife water = i % 2 == 0 ? new FoulingLife(2.5724, 13.838) : new FoulingLife(2.2, 18);
            FoulingLife condenser = i % 2 == 0 ? new FoulingLife(2.4, 16) : new FoulingLife(2, 24);
            all.add(new MachineRisk(0.2, Optional.of(condenser), i * 0.07, water, i * 0.09));
        }
        risks = all;
    }

    @Benchmark
    public void fourChoices(Blackhole hole) {
        List<Forecast> forecasts = new ArrayList<>();
        for (MaintenancePolicy choice : List.of(choice(0, CleaningSchedule.NEVER, 1),
                choice(120000, CleaningSchedule.every(6), 1),
                choice(100000, CleaningSchedule.every(6), 0.95), choice(180000, CleaningSchedule.every(3), 0.9))) {
            forecasts.add(Forecast.of(risks, choice, StopPolicy.RESETS, FIVE_YEARS));
        }
        for (Forecast forecast : forecasts) {
            MixedDistribution total = forecast.total();
            hole.consume(forecast.calls().mean());
            hole.consume(total.mean() + total.deviation());
            hole.consume(total.quantile(0.1) + total.quantile(0.5) + total.quantile(0.9));
            hole.consume(forecast.chanceCheaperThan(forecasts.getFirst()));
        }
    }

    private MaintenancePolicy choice(long planned, CleaningSchedule care, double discount) {
        return new MaintenancePolicy(machines * planned, care, care, new CallTable(Map.of(
                Cause.RANDOM, kinds(discount, 15000, 27658, 52000),
                Cause.CONDENSER, kinds(discount, 15000, 19818, 30517),
                Cause.WATER, kinds(discount, 28650, 39041, 55830))));
    }

    private static List<CallKind> kinds(double discount, long first, long second, long third) {
        return List.of(new CallKind(0.4, Math.round(first * discount)),
                new CallKind(0.35, Math.round(second * discount)), new CallKind(0.25, Math.round(third * discount)));
    }
}
