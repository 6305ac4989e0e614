package icequill.forecast.effects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The heat of ice, which the least that a nameplate may say rests on, against textbooks. */
class HeatBalanceTest {

    /** Published on a teaching page: 25 lb of ice at 5 F to water at 40 F take 340.2 + 3,600 + 200 Btu (heat of ice 0.504 there). */
    @Test
    void heat_publishedExample_matches() {
        assertThat(25 * new HeatBalance(40, 5).perPound()).isEqualTo(4140.2, within(25 * 27 * 0.004 + 0.01));
    }

    /** Textbook formulas, worked out apart from the program. */
    @ParameterizedTest
    @CsvSource({"70, 32, 182, 5.3339", "70, 20, 188, 5.5097", "50, 32, 162, 4.7478", "50, 20, 168, 4.9236",
            "90, 32, 202, 5.9200", "90, 20, 208, 6.0959"})
    void heat_ofAPound_byTheFormula(double water, double ice, double pound, double thermal) {
        assertThat(new HeatBalance(water, ice).perPound()).isEqualTo(pound);
        assertThat(new HeatBalance(water, ice).thermal()).isEqualTo(thermal, within(6e-5));
    }

    /** Carnot's formula, worked out apart from the program. */
    @ParameterizedTest
    @CsvSource({"15, 105, 5.27411, 1.0447, 1.0113", "20, 100, 5.99588, 0.9189, 0.8896",
            "15, 110, 4.99653, 1.1027, 1.0675", "20, 110, 5.32967, 1.0338, 1.0008"})
    void heat_idealMachine_byTheFormula(double evaporating, double condensing, double performance, double cold,
            double freezing) {
        assertThat(HeatBalance.idealPerformance(evaporating, condensing)).isEqualTo(performance, within(5e-6));
        assertThat(new HeatBalance(70, 20).ideal(evaporating, condensing)).isEqualTo(cold, within(6e-5));
        assertThat(new HeatBalance(70, 32).ideal(evaporating, condensing)).isEqualTo(freezing, within(6e-5));
    }

    /** The floor of all machines, and the water that is chilled and drained: worked out apart from the program. */
    @Test
    void heat_reversibleAndPurged_byTheFormula() {
        assertThat(new HeatBalance(70, 20).reversible(90)).isEqualTo(0.6066, within(5e-5));
        assertThat(new HeatBalance(70, 20).purged(20)).isEqualTo(2542.5, within(0.1));
        // 5.80 kWh for 100 lb, the limit of a head of 500 lb, is 18.0 % of the ideal between 15 F and 105 F.
        assertThat(new HeatBalance(70, 20).ideal(15, 105) / 5.80).isEqualTo(0.180, within(5e-4));
        assertThat(new HeatBalance(70, 20).thermal() / 5.80).isEqualTo(0.950, within(5e-4));
        assertThatIllegalArgumentException().isThrownBy(() -> new HeatBalance(30, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatBalance.idealPerformance(20, 20));
    }
}
