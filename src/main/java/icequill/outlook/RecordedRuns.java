package icequill.outlook;

import icequill.forecast.Cause;
import icequill.forecast.fit.DatedRun;
import icequill.forecast.fit.DatedRun.Days;
import icequill.forecast.fit.Side;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.RecordedRun;
import icequill.forecast.inputs.RecordedRun.End;
import icequill.forecast.inputs.SiteFactors;
import icequill.forecast.stops.Pace;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The runs of a table, each with how much faster dirt works at its site, so that all sites can be laid together. After a stop whose call cleaned nothing the dirt goes on from where it was.
 *
 * @param rates empty where the shop expects nothing of machines
 */
public record RecordedRuns(List<RecordedRun> records, Optional<ForecastRates> rates) {

    /** A side of a machine. */
    private record Of(String machine, Side side) {}

    /** Dirt that no call cleaned away: since when, and when the run ended that it outlived. */
    private record Dirt(Days since, Days until) {}

    /** The runs of a side. Those of which nobody knows how long their dirt had gathered are left out. */
    List<DatedRun> of(Side side) {
        Map<Of, Dirt> left = new HashMap<>();
        List<DatedRun> runs = new ArrayList<>();
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

    private DatedRun run(RecordedRun record, Days since, Days from) {
        boolean stopped = record.end() == End.STOPPED || record.end() == End.RESTARTED;
        return new DatedRun(record.kind(), since, record.watched().orElse(from.first()), record.until(), stopped,
                faster(record), record.place());
    }

    /** How the months of a year count for a side, as far as the shop knows. */
    Pace pace(Side side) {
        return rates.map(found -> found.seasons().pace(cause(side))).orElse(Pace.EVEN);
    }

    /** Whether the shop's file says in which quarters a side stops more often. */
    boolean hasSeasons() {
        return Stream.of(Side.values()).anyMatch(side -> !pace(side).equals(Pace.EVEN));
    }

    static Cause cause(Side side) {
        return side == Side.CONDENSER ? Cause.CONDENSER : Cause.WATER;
    }

    private double faster(RecordedRun record) {
        Function<SiteFactors.Speed, BigDecimal> side = record.side() == Side.CONDENSER
                ? SiteFactors.Speed::condenser
                : SiteFactors.Speed::water;
        return rates.map(found -> found.factors().of(record.kind(), record.worse()).stream()
                .mapToDouble(factor -> side.apply(factor.speed()).doubleValue()).reduce(1, (one, other) -> one * other))
                .orElse(1.0);
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
