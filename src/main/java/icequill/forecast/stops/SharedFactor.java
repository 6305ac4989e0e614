package icequill.forecast.stops;

import icequill.problem.Check;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;

/**
 * How far the machines of one site are worse or better together than was guessed, since they share water, kitchen and summer: a
 * factor on the chance of every stop, gamma distributed with a mean of 1 (a shared frailty; from memory: Vaupel, Manton and Stallard,
 * Demography 16, 1979). Calls that come at random then follow a negative binomial law.
 *
 * @param deviation standard deviation of the factor, from 0 to {@value #MOST}; at 0 machines do not depend on each other
 */
public record SharedFactor(double deviation) {

    /** The largest deviation for which a few scenarios still tell the distribution. */
    public static final double MOST = 0.75;

    public static final SharedFactor NONE = new SharedFactor(0);

    private static final int SCENARIOS = 8;

    public SharedFactor {
        Check.that(deviation >= 0 && deviation <= MOST, "a deviation of " + deviation);
    }

    /**
     * One value of the factor.
     *
     * @param weight the chance that stands for it
     * @param factor on the chance of every stop, above 0
     */
    public record Scenario(double weight, double factor) {

        /** The machines as they are in this scenario. */
        public List<MachineRisk> of(List<MachineRisk> machines) {
            return machines.stream().map(machine -> machine.stopping(factor)).toList();
        }
    }

    /**
     * A few values that stand for all, the smallest first: the nodes of Gauss's quadrature for the gamma density (Golub and Welsch,
     * Mathematics of Computation 23, 1969; from memory), so that mean and variance of the factor are exact.
     */
    public List<Scenario> scenarios() {
        if (deviation == 0) {
            return List.of(new Scenario(1, 1));
        }
        double shape = 1 / (deviation * deviation);
        RealMatrix recurrence = new Array2DRowRealMatrix(SCENARIOS, SCENARIOS);
        for (int i = 0; i < SCENARIOS; i++) {
            recurrence.setEntry(i, i, 2 * i + shape);
            if (i > 0) {
                double beside = Math.sqrt(i * (i + shape - 1));
                recurrence.setEntry(i, i - 1, beside);
                recurrence.setEntry(i - 1, i, beside);
            }
        }
        EigenDecompositionSymmetric nodes = new EigenDecompositionSymmetric(recurrence);
        return IntStream.range(0, SCENARIOS).map(i -> SCENARIOS - 1 - i).mapToObj(i -> {
            double first = nodes.getEigenvector(i).getEntry(0);
            return new Scenario(first * first, nodes.getEigenvalue(i) / shape);
        }).toList();
    }
}
