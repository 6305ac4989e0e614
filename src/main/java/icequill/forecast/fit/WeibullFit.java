package icequill.forecast.fit;

import icequill.forecast.stops.FoulingLife;
import icequill.party.SiteKind;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;

/**
 * Fits a clock to the shop's own records by maximum likelihood, with runs that did not end in a stop counted as what they are
 * (NIST/SEMATECH e-Handbook 8.4.1.3). Where calls only restart a machine, a run enters with the dirt that the stop before it had
 * met; the likelihood is then that of the power law (8.4.5.2). Limits are by profile likelihood: those values whose best companion makes the records not much
 * less likely (twice the fall of the log likelihood up to {@value #FALL}, the 95 % point of chi-square with one degree of freedom).
 */
public final class WeibullFit {

    private static final double FALL = 3.841458820694124;
    private static final double MOST_MONTHS = 600;
    /** Times the likeliest value: what lies beyond is no limit. */
    private static final double FARTHEST = 1e6;

    private WeibullFit() {
    }

    /** One fit for each kind of site, from all its machines together. */
    public static Validated<Map<SiteKind, Fit>> byKind(List<Run> runs) {
        Problems problems = new Problems();
        Map<SiteKind, Fit> fits = new TreeMap<>(Comparator.comparing(SiteKind::id));
        for (SiteKind kind : runs.stream().map(Run::kind).distinct().toList()) {
            problems.take(of(runs.stream().filter(run -> run.kind().equals(kind)).toList()))
                    .ifPresent(fit -> fits.put(kind, fit));
        }
        return problems.or(() -> fits);
    }

    /**
     * One fit for all runs.
     *
     * @return problems where a run has no length or an absurd one, or where all stops came at the end of the longest run
     */
    public static Validated<Fit> of(List<Run> runs) {
        Problems problems = new Problems();
        runs.stream().filter(run -> !(run.atMost() > run.entered() && run.atMost() <= MOST_MONTHS))
                .forEach(run -> problems.add(new Problem(Code.OUT_OF_RANGE, run.place(),
                        "a run of " + run.atMost() + " months", "above 0, up to " + MOST_MONTHS)));
        List<Run> stopped = runs.stream().filter(Run::stopped).toList();
        if (!problems.isEmpty() || stopped.size() < Fit.FEWEST_STOPS) {
            return problems.or(() -> new Fit.TooFew(stopped.size(), runs.size()));
        }
        RunLikelihood likelihood = new RunLikelihood(runs);
        if (likelihood.slope(RunLikelihood.MOST_SHAPE) >= 0) {
            problems.add(new Problem(Code.NOT_ALLOWED, stopped.getFirst().place(),
                    "all " + stopped.size() + " stops came after " + stopped.getFirst().months()
                            + " months, and no run was longer",
                    "stops after different times; were the months of stops rounded, or taken from the calendar of cleanings?"));
        }
        return problems.or(() -> found(likelihood, runs));
    }

    private static Fit found(RunLikelihood likelihood, List<Run> runs) {
        FoulingLife clock = likelihood.likeliest();
        double least = likelihood.at(clock) - FALL / 2;
        return new Fit.Found(clock,
                limits(clock.shape(), RunLikelihood.LEAST_SHAPE,
                        shape -> least - likelihood.at(likelihood.withShape(shape))),
                limits(clock.scale(), clock.scale() / FARTHEST,
                        scale -> least - likelihood.at(likelihood.withScale(scale))),
                (int) runs.stream().filter(Run::stopped).count(), runs.size(), points(runs, clock));
    }

    /** Where a function that is below 0 at the likeliest value comes to 0 on both sides of it. */
    private static Fit.Limits limits(double likeliest, double least, DoubleUnaryOperator beyond) {
        double high = bracket(likeliest, 2, least, beyond);
        double low = bracket(likeliest, 0.5, least, beyond);
        return new Fit.Limits(
                low == 0 ? 0 : RunLikelihood.root(value -> -beyond.applyAsDouble(value), low, likeliest),
                Double.isInfinite(high) ? high : RunLikelihood.root(beyond, likeliest, high));
    }

    /** Goes away from the likeliest value by a factor until the function is above 0. */
    private static double bracket(double likeliest, double factor, double least, DoubleUnaryOperator beyond) {
        double value = likeliest * factor;
        while (beyond.applyAsDouble(value) < 0) {
            value *= factor;
            if (value > likeliest * FARTHEST) {
                return Double.POSITIVE_INFINITY;
            }
            if (value < least) {
                return 0;
            }
        }
        return value;
    }

    /** Of runs that ended in the same month, those that stopped come first; what entered later was not watched yet. */
    private static List<Fit.Point> points(List<Run> runs, FoulingLife clock) {
        List<Double> months = runs.stream().filter(Run::stopped).map(Run::months).distinct()
                .sorted(Comparator.naturalOrder()).toList();
        List<Fit.Point> points = new ArrayList<>();
        double running = 1;
        for (double month : months) {
            long watched = runs.stream().filter(run -> run.entered() < month && run.months() >= month).count();
            long stops = runs.stream().filter(run -> run.stopped() && run.months() == month).count();
            double left = running * (watched - stops) / watched;
            points.add(new Fit.Point(month, 1 - (running + left) / 2, clock.chanceBy(month)));
            running = left;
        }
        return points;
    }
}
