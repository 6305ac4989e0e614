package icequill.explain;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.money.Stepping;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class FigureTest {

    private static final Figure TWO = Figure.term(2, "");
    private static final Figure THREE = Figure.term(3, "");

    @Test
    void text_nested_bracketsOnlyWhereNeeded() {
        assertThat(TWO.plus(THREE).times(TWO).text()).isEqualTo("(2 + 3) x 2");
        assertThat(TWO.times(THREE).plus(TWO).text()).isEqualTo("2 x 3 + 2");
        assertThat(TWO.minus(THREE.minus(TWO)).text()).isEqualTo("2 - (3 - 2)");
        assertThat(TWO.minus(THREE).minus(TWO).text()).isEqualTo("2 - 3 - 2");
        assertThat(TWO.over(THREE.times(TWO)).text()).isEqualTo("2 / (3 x 2)");
    }

    @Test
    void explanation_everyKindOfFigureAndFact_readsBackToItsAmount() {
        Figure share = new Figure.Share(new BigDecimal("10.00"), List.of(new BigDecimal("1"), new BigDecimal("2")), 1,
                2);
        Figure packs = new Figure.RaisedTo(Figure.term(40, "floz"), new BigDecimal("32"))
                .over(Figure.term(32, "floz/pack"));
        Explanation how = Explanation.of(packs.times(Figure.price(usd("24.5"), "pack")).minus(share)
                .plus(Figure.percent(Percent.of("12.5")).times(Figure.price(usd("8"), "")))
                .rounded(Rounding.LINE, USD),
                Phrase.of("why"));

        String text = how.text(USD);

        assertThat(text).isEqualTo("round(up(40 floz; 32) / 32 floz/pack x 24.50 USD/pack"
                + " - share(10.00; 1 : 2; 2; 2) + 12.5 % x 8.00 USD; line; 2) = 43.33");
        assertThat(HowReader.evaluate(text)).isEqualByComparingTo("43.33");
        assertThat(how.because(Phrase.of("more")).reasons()).hasSize(2);
    }

    /** 1.07 to the power of 2 is 1.1449, by hand. */
    @Test
    void explanation_power_readsBack() {
        Figure growth = new Figure.Power(Figure.term(1, "").plus(Figure.percent(Percent.of("7"))), 2);

        String text = Explanation.of(growth.times(Figure.price(usd("100"), "")).rounded(Rounding.OWNING, USD))
                .text(USD);

        assertThat(text).isEqualTo("round(power(1 + 7 %; 2) x 100.00 USD; owning; 2) = 114.49");
        assertThat(HowReader.evaluate(text)).isEqualByComparingTo("114.49");
        assertThatIllegalArgumentException().isThrownBy(() -> new Figure.Power(TWO, -1));
    }

    @Test
    void explanation_priceSteps_readBack() {
        Figure price = Figure.price(usd("684"), "").times(Figure.percent(Percent.of("105")));
        String nearest = Explanation.of(price.stepped(Stepping.NEAREST, usd("5"))).text(USD);
        String down = Explanation.of(price.stepped(Stepping.DOWN, usd("5"))).text(USD);

        assertThat(nearest).isEqualTo("step(684.00 USD x 105 %; nearest; 5.00) = 720.00");
        assertThat(HowReader.evaluate(nearest)).isEqualByComparingTo("720");
        assertThat(down).isEqualTo("step(684.00 USD x 105 %; down; 5.00) = 715.00");
        assertThat(HowReader.evaluate(down)).isEqualByComparingTo("715");
    }

    @Test
    void amount_withoutANamedRounding_isAFault() {
        Explanation third = Explanation.of(TWO.over(THREE));

        assertThatIllegalStateException().isThrownBy(() -> third.amount(USD)).withMessageContaining("2 / 3");
    }

    @Test
    void term_strangeUnit_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Figure.term(1, "fl oz"));
        assertThatIllegalArgumentException().isThrownBy(() -> Phrase.of("no spaces"));
    }
}
