package icequill.forecast.charges;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.CountDistribution;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.StopCounts;
import icequill.forecast.stops.StopPolicy;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** Three ways to add charges up. Seeds are fixed, so that a run repeats. */
class SumsOfChargesTest {

    /** Added up point by point, step by step and on a lattice: three ways to the same chances; of two machines, on even charges. */
    @Property(seed = "20261105")
    void sums_byPointsStepsAndTransform_agree(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Random random = new Random(seed);
        List<ChargePart> parts = List.of(
                part(CountDistribution.poisson(3 * random.nextDouble()), random),
                part(new StopCounts(new FoulingLife(2.5, 12), StopPolicy.RESETS, 36,
                        CleaningSchedule.every(3 + random.nextInt(10)))
                        .of(10 * random.nextDouble()), random));
        SumRange range = SumRange.of(parts);

        double[] direct = DirectSum.of(parts, 100, (int) (range.high() / 100) + 1);
        LatticeSum lattice = LatticeSum.of(parts, range, 100);
        double[] transformed = lattice.chances();

        PointSum points = PointSum.of(parts, range.high()).orElseThrow();
        double[] spread = new double[direct.length];
        for (int k = 0; k < points.points().length; k++) {
            spread[(int) (points.points()[k] / 100)] = points.chances()[k];
        }
        assertThat(spread).containsExactly(direct, within(1e-13));

        assertThat(lattice.step()).isEqualTo(100);
        for (int k = 0; k < Math.min(direct.length - lattice.lowest() / 100, transformed.length); k++) {
            assertThat(transformed[k]).isEqualTo(direct[k + (int) (lattice.lowest() / 100)], within(1e-12));
        }
    }

    private static ChargePart part(CountDistribution counts, Random random) {
        return new ChargePart(counts, List.of(new ChargePart.Amount(0.6, 100L * random.nextInt(300)),
                new ChargePart.Amount(0.4, 100L * random.nextInt(500))));
    }
}
