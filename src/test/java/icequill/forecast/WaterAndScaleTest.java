package icequill.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import icequill.forecast.WaterAndScale.Hardness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A balance of mass, worked out apart from the program. */
class WaterAndScaleTest {

    private static final double POUNDS_A_DAY = 250;

    @ParameterizedTest
    @CsvSource({"182.5, 20, 150, 9125, 5181.3", "90, 20, 150, 4500, 2555.2", "182.5, 20, 60, 9125, 2072.5",
            "182.5, 25, 250, 11406.25, 10794.3"})
    void minerals_comeInWithTheWater(double days, double gallons, double hardness, double water, double grams) {
        WaterAndScale scale = new WaterAndScale(POUNDS_A_DAY * days, gallons, hardness);

        assertThat(scale.water()).isEqualTo(water, within(1e-9));
        assertThat(scale.minerals()).isEqualTo(grams, within(0.05));
    }

    @Test
    void scale_onePercentOverAPlate_isThin() {
        WaterAndScale scale = new WaterAndScale(45625, 20, 150);

        assertThat(scale.mineralPounds()).isEqualTo(11.42, within(0.005));
        assertThat(scale.scale(0.01)).isEqualTo(51.81, within(0.005));
        assertThat(scale.thickness(0.01, 3000)).isEqualTo(0.0637, within(5e-5));
        assertThat(WaterAndScale.transfer(0.0637)).isEqualTo(0.9538, within(5e-5));
        // What the value of 760 for a meter was taken from: 25 mm take 95 %.
        assertThat(WaterAndScale.transfer(25)).isEqualTo(0.05, within(1e-9));
        assertThatIllegalArgumentException().isThrownBy(() -> scale.scale(1.1));
        assertThatIllegalArgumentException().isThrownBy(() -> scale.thickness(0.01, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new WaterAndScale(1, 11.9, 60));
    }

    @ParameterizedTest
    @CsvSource({"20, 2.495", "25, 1.921"})
    void purge_allMineralsLeaveWithIt(double gallons, double times) {
        assertThat(new WaterAndScale(1, gallons, 60).purgeStrength()).isEqualTo(times, within(5e-4));
    }

    /** US Geological Survey, read on pages that report it; grains by the definition of the grain and the US gallon. */
    @ParameterizedTest
    @CsvSource({"60, SOFT, 3.505", "60.1, MODERATELY_HARD, 3.511", "120, MODERATELY_HARD, 7.010", "180, HARD, 10.515",
            "181, VERY_HARD, 10.574"})
    void hardness_classAndGrains(double milligrams, Hardness hardness, double grains) {
        assertThat(Hardness.of(milligrams)).isEqualTo(hardness);
        assertThat(milligrams / WaterAndScale.GRAIN_A_GALLON).isEqualTo(grains, within(6e-4));
    }
}
