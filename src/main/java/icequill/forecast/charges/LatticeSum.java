package icequill.forecast.charges;

import icequill.forecast.charges.ChargePart.Amount;
import icequill.forecast.stops.CountDistribution;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/** A sum of charges by its generating function on the unit circle and an inverse Fourier transform. */
final class LatticeSum {

    private static final int MOST_POINTS = 1 << 15;
    /** Split charges reach a little beyond the range of whole ones. */
    private static final int MARGIN = 128;
    /** Terms of a polynomial that are added up at once. */
    private static final int TERMS = 4;
    private static final double[] COSINE = new double[MOST_POINTS];
    private static final double[] SINE = new double[MOST_POINTS];

    static {
        for (int k = 0; k < MOST_POINTS; k++) {
            COSINE[k] = Math.cos(2 * Math.PI * k / MOST_POINTS);
            SINE[k] = -Math.sin(2 * Math.PI * k / MOST_POINTS);
        }
    }

    private final double[] chances;
    private final long lowest;
    private final long step;

    private LatticeSum(double[] chances, long lowest, long step) {
        this.chances = chances;
        this.lowest = lowest;
        this.step = step;
    }

    /** The chances of the points from the lowest on; the caller's own from here. */
    double[] chances() {
        return chances;
    }

    /** Minor units of the first point. */
    long lowest() {
        return lowest;
    }

    /** Minor units between points. */
    long step() {
        return step;
    }

    /**
     * The sum within its range.
     *
     * @param common a step that all amounts are multiples of; a multiple of it is used where the range is too wide
     */
    static LatticeSum of(List<ChargePart> parts, SumRange range, long common) {
        long step = common;
        while ((range.high() - range.low()) / step + 4 + 2 * MARGIN > MOST_POINTS) {
            step *= 2;
        }
        long first = Math.max(0, range.low() / step - MARGIN);
        long points = range.high() / step + 2 + MARGIN - first;
        int length = Math.max(4, Integer.highestOneBit((int) points - 1) * 2);
        double[] circle = transformed(parts, length, step);
        double[] chances = new double[(int) points];
        for (int k = 0; k < chances.length; k++) {
            // What the transform leaves below zero is nothing.
            chances[k] = Math.max(0, circle[Math.floorMod(first + k, length)]);
        }
        return new LatticeSum(chances, first * step, step);
    }

    private static double[] transformed(List<ChargePart> parts, int length, long step) {
        // A real sum has a spectrum that mirrors itself, so half of it is enough.
        int half = length / 2 + 1;
        Spectrum product = Spectrum.one(half);
        for (ChargePart part : parts) {
            product.times(Spectrum.of(part, length, step, half).in(part.counts()));
        }
        return product.circle();
    }

    /** Complex values at the points of half a circle. */
    private static final class Spectrum {
        private final double[] real;
        private final double[] imaginary;

        private Spectrum(double[] real, double[] imaginary) {
            this.real = real;
            this.imaginary = imaginary;
        }

        static Spectrum one(int points) {
            double[] real = new double[points];
            Arrays.fill(real, 1);
            return new Spectrum(real, new double[points]);
        }

        /** Of one charge. */
        static Spectrum of(ChargePart part, int length, long step, int half) {
            Spectrum sum = new Spectrum(new double[half], new double[half]);
            for (Amount amount : part.amounts()) {
                long below = amount.minor() / step;
                double above = (double) (amount.minor() % step) / step;
                sum.add(amount.share() * (1 - above), below, length);
                if (above > 0) {
                    sum.add(amount.share() * above, below + 1, length);
                }
            }
            return sum;
        }

        /** The powers of a point of the circle; places come around after its length. */
        private void add(double share, long place, int length) {
            int turn = (int) (place % length) * (MOST_POINTS / length);
            int at = 0;
            for (int k = 0; k < real.length; k++) {
                real[k] += share * COSINE[at];
                imaginary[k] += share * SINE[at];
                at = (at + turn) & (MOST_POINTS - 1);
            }
        }

        /** E[this^calls]: a polynomial, four of its terms at a time (Paterson and Stockmeyer, SIAM J. Comput. 2, 1973; from memory). */
        Spectrum in(CountDistribution counts) {
            double[] chances = new double[(counts.most() / TERMS + 1) * TERMS];
            Arrays.setAll(chances, counts::chance);
            double[] re = new double[real.length];
            double[] im = new double[real.length];
            for (int k = 0; k < re.length; k++) {
                double x = real[k];
                double y = imaginary[k];
                double x2 = x * x - y * y;
                double y2 = 2 * x * y;
                double x3 = x2 * x - y2 * y;
                double y3 = x2 * y + y2 * x;
                double x4 = x2 * x2 - y2 * y2;
                double y4 = 2 * x2 * y2;
                double sum = 0;
                double turned = 0;
                for (int n = chances.length - TERMS; n >= 0; n -= TERMS) {
                    double one = chances[n + 1];
                    double two = chances[n + 2];
                    double three = chances[n + 3];
                    double next = sum * x4 - turned * y4 + (chances[n] + one * x + two * x2 + three * x3);
                    turned = sum * y4 + turned * x4 + (one * y + two * y2 + three * y3);
                    sum = next;
                }
                re[k] = sum;
                im[k] = turned;
            }
            return new Spectrum(re, im);
        }

        /** The real values whose spectrum this is: those at even and at odd places as real and imaginary parts of one transform. */
        double[] circle() {
            int middle = real.length - 1;
            double[][] folded = new double[2][middle];
            int turn = MOST_POINTS / (2 * middle);
            for (int k = 0; k < middle; k++) {
                double evenReal = (real[k] + real[middle - k]) / 2;
                double evenImaginary = (imaginary[k] - imaginary[middle - k]) / 2;
                double differenceReal = (real[k] - real[middle - k]) / 2;
                double differenceImaginary = (imaginary[k] + imaginary[middle - k]) / 2;
                double cosine = COSINE[k * turn];
                double sine = -SINE[k * turn];
                double oddReal = cosine * differenceReal - sine * differenceImaginary;
                double oddImaginary = cosine * differenceImaginary + sine * differenceReal;
                folded[0][k] = evenReal - oddImaginary;
                folded[1][k] = evenImaginary + oddReal;
            }
            FastFourierTransformer.transformInPlace(folded, DftNormalization.STANDARD, TransformType.INVERSE);
            double[] values = new double[2 * middle];
            for (int k = 0; k < middle; k++) {
                values[2 * k] = folded[0][k];
                values[2 * k + 1] = folded[1][k];
            }
            return values;
        }

        void times(Spectrum other) {
            for (int k = 0; k < real.length; k++) {
                double next = real[k] * other.real[k] - imaginary[k] * other.imaginary[k];
                imaginary[k] = real[k] * other.imaginary[k] + imaginary[k] * other.real[k];
                real[k] = next;
            }
        }
    }
}
