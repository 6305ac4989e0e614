package icequill.forecast;

import icequill.forecast.ChargePart.Amount;
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
        double[][] whole = {Arrays.copyOf(product.real, length), Arrays.copyOf(product.imaginary, length)};
        for (int k = half; k < length; k++) {
            whole[0][k] = product.real[length - k];
            whole[1][k] = -product.imaginary[length - k];
        }
        FastFourierTransformer.transformInPlace(whole, DftNormalization.STANDARD, TransformType.INVERSE);
        return whole[0];
    }

    /** Complex values at the points of half a circle. Loops run over the points, so that the compiler can work on several at once. */
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

        /** E[this^calls], by Horner's scheme. */
        Spectrum in(CountDistribution counts) {
            double[] re = new double[real.length];
            double[] im = new double[real.length];
            for (int calls = counts.most(); calls >= 0; calls--) {
                double chance = counts.chance(calls);
                for (int k = 0; k < re.length; k++) {
                    double next = re[k] * real[k] - im[k] * imaginary[k] + chance;
                    im[k] = re[k] * imaginary[k] + im[k] * real[k];
                    re[k] = next;
                }
            }
            return new Spectrum(re, im);
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
