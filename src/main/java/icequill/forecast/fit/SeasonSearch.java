package icequill.forecast.fit;

import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.Pace;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Looks whether recorded stops have a season, and if so, which is the likeliest, with the clock that belongs to it.
 *
 * @param pace by which months count as far as is known
 */
public record SeasonSearch(List<DatedRun> runs, Pace pace) {

    private static final int MONTHS = 3;

    public SeasonSearch {
        runs = List.copyOf(runs);
    }

    /** With the clock that was fitted to the runs at this pace. */
    public StopSeason with(FoulingLife clock) {
        int[] stops = new int[Pace.QUARTERS];
        double[] hazards = new double[Pace.QUARTERS];
        for (DatedRun run : runs) {
            if (run.stopped()) {
                stops[run.quarter()]++;
            }
            expect(run, clock, hazards);
        }
        double all = IntStream.of(stops).sum();
        double hazard = IntStream.range(0, Pace.QUARTERS).mapToDouble(q -> hazards[q]).sum();
        List<StopSeason.Quarter> quarters = IntStream.range(0, Pace.QUARTERS)
                .mapToObj(q -> new StopSeason.Quarter(stops[q], all * hazards[q] / hazard)).toList();
        if (!quarters.stream().allMatch(quarter -> quarter.expected() >= StopSeason.FEWEST_EXPECTED)) {
            return new StopSeason.NotLookedAt();
        }
        double chiSquare = quarters.stream()
                .mapToDouble(quarter -> Math.pow(quarter.stops() - quarter.expected(), 2) / quarter.expected()).sum();
        return chiSquare > StopSeason.THRESHOLD
                ? new StopSeason.Found(quarters, chiSquare, new QuarterFactors(runs).likeliest(clock))
                : new StopSeason.NoneFound(quarters, chiSquare);
    }

    /** Adds the stops that are expected of a run while it was watched. */
    private void expect(DatedRun run, FoulingLife clock, double[] hazards) {
        LocalDate end = run.stopped() ? run.until().middle() : run.until().first();
        LocalDate from = run.watched().isAfter(run.since().middle()) ? run.watched() : run.since().middle();
        while (from.isBefore(end)) {
            LocalDate next = from.with(IsoFields.DAY_OF_QUARTER, 1).plusMonths(MONTHS);
            LocalDate until = next.isBefore(end) ? next : end;
            hazards[DatedRun.quarter(from)] += clock.hazard(run.age(pace, until)) - clock.hazard(run.age(pace, from));
            from = until;
        }
    }
}
