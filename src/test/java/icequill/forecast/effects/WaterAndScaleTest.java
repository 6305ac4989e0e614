package icequill.forecast.effects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

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
    void minerals_inPounds_andWaterThatCannotBe() {
        assertThat(water("45625", "20", "150").mineralPounds().value(2)).isEqualByComparingTo("11.42");
        assertThatIllegalArgumentException().isThrownBy(() -> water("1", "11.9", "60"));
    }
}
