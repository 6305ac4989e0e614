package icequill.outlook;

import icequill.forecast.fit.Run;
import icequill.forecast.fit.Side;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.RecordedRun;
import icequill.forecast.inputs.RecordedRun.Days;
import icequill.forecast.inputs.RecordedRun.End;
import icequill.forecast.inputs.SiteFactors;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The runs of a table as ages of dirt. A month counts as often as dirt works faster at its site, so that all sites can be laid
 * together. After a stop whose call cleaned nothing the dirt goes on from where it was.
 *
 * @param rates empty where the shop expects nothing of machines
 */
public record RecordedRuns(List<RecordedRun> records, Optional<ForecastRates> rates) {

    private static final double DAYS_OF_A_MONTH = 365.25 / 12;

    /** A side of a machine. */
    private record Of(String machine, Side side) {}

    /** Dirt that no call cleaned away: since when, and when the run ended that it outlived. */
    private record Dirt(Days since, Days until) {}

    /** The runs of a side. Those of which nobody knows how long their dirt had gathered are left out. */
    List<Run> of(Side side) {
        Map<Of, Dirt> left = new HashMap<>();
        List<Run> runs = new ArrayList<>();
        records.stream().filter(record -> record.side() == side && record.from().isPresent())
                .sorted(Comparator.comparing(record -> record.from().orElseThrow().first())).forEach(record -> {
                    Days from = record.from().orElseThrow();
                    Days since = Optional.ofNullable(left.remove(new Of(record.machine(), side)))
                            .filter(dirt -> dirt.until().equals(from)).map(Dirt::since).orElse(from);
                    runs.add(run(record, since, from));
                    if (leavesDirt(record.end())) {
                        left.put(new Of(record.machine(), side), new Dirt(since, record.until()));
                    }
                });
        return runs;
    }

    private boolean leavesDirt(End end) {
        return end == End.RESTARTED || (end == End.STOPPED
                && rates.filter(found -> found.callsThatClean().isZero()).isPresent());
    }

    private Run run(RecordedRun record, Days since, Days from) {
        double faster = faster(record);
        double entered = faster * months(since.first(), record.watched().orElse(from.first()));
        double atLeast = Math.max(entered, faster * months(since.last(), record.until().first()));
        boolean stopped = record.end() == End.STOPPED || record.end() == End.RESTARTED;
        return new Run(record.kind(), entered, atLeast,
                stopped ? faster * months(since.first(), record.until().last()) : atLeast, stopped, record.place());
    }

    private double faster(RecordedRun record) {
        Function<SiteFactors.Speed, BigDecimal> side = record.side() == Side.CONDENSER
                ? SiteFactors.Speed::condenser
                : SiteFactors.Speed::water;
        return rates.map(found -> found.factors().of(record.kind(), record.worse()).stream()
                .mapToDouble(factor -> side.apply(factor.speed()).doubleValue()).reduce(1, (one, other) -> one * other))
                .orElse(1.0);
    }

    private static double months(LocalDate from, LocalDate until) {
        return ChronoUnit.DAYS.between(from, until) / DAYS_OF_A_MONTH;
    }

    /** How many runs are left out because nobody knows how long their dirt had gathered. */
    int leftOut() {
        return (int) records.stream().filter(record -> record.from().isEmpty()).count();
    }

    /** Whether months count more than once somewhere. */
    boolean isScaled() {
        return records.stream().anyMatch(record -> faster(record) != 1);
    }
}
