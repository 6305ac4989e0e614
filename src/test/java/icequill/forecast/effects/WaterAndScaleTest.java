package icequill.forecast.effects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import icequill.forecast.effects.WaterAndScale.Hardness;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A balance of mass, worked out apart from the program. */
class WaterAndScaleTest {

    private static final BigDecimal POUNDS_A_DAY = new BigDecimal("250");

    private static WaterAndScale water(String ice, String gallons, String hardness) {
        return new WaterAndScale(new BigDecimal(ice), new BigDecimal(gallons), new BigDecimal(hardness),
                Provenance.OWN);
    }

    @ParameterizedTest
    @CsvSource({"182.5, 20, 150, 9125, 5181.3", "90, 20, 150, 4500, 2555.2", "182.5, 20, 60, 9125, 2072.5",
            "182.5, 25, 250, 11406.25, 10794.3"})
    void minerals_comeInWithTheWater(BigDecimal days, String gallons, String hardness, String water, String grams) {
        WaterAndScale scale = water(POUNDS_A_DAY.multiply(days).toPlainString(), gallons, hardness);

        assertThat(scale.water().value(2)).isEqualByComparingTo(water);
        assertThat(scale.water().mark()).isEqualTo(Provenance.OWN);
        assertThat(scale.minerals().value(1)).isEqualByComparingTo(grams);
        assertThat(scale.minerals().mark()).isEqualTo(Provenance.DERIVED);
    }

    /** 250 lb a day, 20 gal for 100 lb, 365 days; and a published worked figure of a water agency: 150 gal, 400 lb. */
    @Test
    void water_ofAYear_byTheFormulaOfTheEpa() {
        assertThat(water("91250", "20", "0").water().value(0)).isEqualByComparingTo("18250");
        assertThat(water("146000", "150", "0").water().value(0)).isEqualByComparingTo("219000");
    }

    @Test
    void scale_onePercentOverAPlate_isThin() {
        WaterAndScale scale = water("45625", "20", "150");
        BigDecimal part = new BigDecimal("0.01");

        assertThat(scale.mineralPounds().value(2)).isEqualByComparingTo("11.42");
        assertThat(scale.scale(part).value(2)).isEqualByComparingTo("51.81");
        assertThat(scale.thickness(part, new BigDecimal("3000")).value(4)).isEqualByComparingTo("0.0637");
        assertThat(WaterAndScale.transfer(new BigDecimal("0.0637")).value(4)).isEqualByComparingTo("0.9538");
        // What the value of 760 for a meter was taken from: 25 mm take 95 %.
        assertThat(WaterAndScale.transfer(new BigDecimal("25")).value(3)).isEqualByComparingTo("0.05");
        assertThatIllegalArgumentException().isThrownBy(() -> scale.scale(new BigDecimal("1.1")));
        assertThatIllegalArgumentException().isThrownBy(() -> scale.thickness(part, BigDecimal.ZERO));
        assertThatIllegalArgumentException().isThrownBy(() -> water("1", "11.9", "60"));
    }

    @ParameterizedTest
    @CsvSource({"20, 2.495", "25, 1.921"})
    void purge_allMineralsLeaveWithIt(String gallons, String times) {
        assertThat(water("1", gallons, "60").purgeStrength().value(3)).isEqualByComparingTo(times);
    }

    /** US Geological Survey, read on pages that report it; grains by the definition of the grain and the US gallon. */
    @ParameterizedTest
    @CsvSource({"60, SOFT, 3.505", "60.1, MODERATELY_HARD, 3.511", "120, MODERATELY_HARD, 7.010", "180, HARD, 10.515",
            "181, VERY_HARD, 10.574", "171.18, HARD, 10"})
    void hardness_classAndGrains(BigDecimal milligrams, Hardness hardness, double grains) {
        assertThat(Hardness.of(milligrams)).isEqualTo(hardness);
        assertThat(WaterAndScale.grains(milligrams).exact().doubleValue()).isEqualTo(grains, within(6e-4));
    }
}
