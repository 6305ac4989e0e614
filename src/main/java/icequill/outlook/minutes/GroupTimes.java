package icequill.outlook.minutes;

import icequill.outlook.minutes.Times.Limits;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * How many times as long as planned each group of tasks took. Of one group it is the median of the visits; of several the sum that comes
 * nearest to all visits (least squares, each visit as one: NIST/SEMATECH e-Handbook 4.4.3.1), with limits by Student's t.
 */
record GroupTimes(TaskGroups groups, List<Times> times) {

    /** Visits beyond the groups below which groups are not told apart. */
    private static final int FEWEST_SPARE = 5;
    private static final double SINGULAR = 1e-6;
    private static final double HIGH = 0.975;

    /** @param visits at least one */
    static GroupTimes of(List<VisitTime> visits) {
        TaskGroups groups = TaskGroups.of(visits);
        return (groups.groups().size() > 1 ? apart(visits, groups) : Optional.<GroupTimes>empty())
                .orElseGet(() -> new GroupTimes(groups.together(),
                        List.of(Times.median(visits.stream().map(VisitTime::timesAtMachines).toList()))));
    }

    /** Empty where there are too few visits, or they are too much alike. */
    private static Optional<GroupTimes> apart(List<VisitTime> visits, TaskGroups groups) {
        int size = groups.groups().size();
        if (visits.size() < size + FEWEST_SPARE) {
            return Optional.empty();
        }
        RealMatrix shares = new Array2DRowRealMatrix(visits.stream().map(groups::shares).toArray(double[][]::new));
        QRDecomposition parts = new QRDecomposition(shares, SINGULAR);
        if (!parts.getSolver().isNonSingular()) {
            return Optional.empty();
        }
        ArrayRealVector took = new ArrayRealVector(
                visits.stream().mapToDouble(VisitTime::timesAtMachines).toArray());
        double[] found = parts.getSolver().solve(took).toArray();
        int spare = visits.size() - size;
        double left = took.subtract(shares.operate(new ArrayRealVector(found))).getNorm();
        RealMatrix spread = new QRDecomposition(shares.transposeMultiply(shares)).getSolver().getInverse();
        double reach = new TDistribution(spare).inverseCumulativeProbability(HIGH) * left / Math.sqrt(spare);
        return Optional.of(new GroupTimes(groups, IntStream.range(0, size).mapToObj(group -> {
            double off = reach * Math.sqrt(spread.getEntry(group, group));
            int had = (int) visits.stream().filter(visit -> groups.shares(visit)[group] > 0).count();
            return new Times(found[group], had, had < Times.FEWEST
                    ? Optional.empty()
                    : Optional.of(new Limits(found[group] - off, found[group] + off)));
        }).toList()));
    }
}
