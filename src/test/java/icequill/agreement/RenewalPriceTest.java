package icequill.agreement;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import icequill.explain.Fact;
import icequill.explain.HowReader;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RenewalPriceTest {

    /**
     * Worked by hand. 684.00 with a cap of 5 % may cost 718.20 at most: 6 % is 725.04, to the step 725; 5 % is 718.20, to the
     * step 720; both are above, and the highest full five below is 715. 3 % is 704.52, to the step 705.
     */
    @ParameterizedTest
    @CsvSource({"684.00, 6, 5, 5, 715.00, reason.renewal-cap", "684.00, 5, 5, 5, 715.00, reason.renewal-cap",
            "684.00, 3, 5, 5, 705.00, reason.price-step", "684.00, 0, 5, 0, 684.00, reason.renewal-kept",
            "684.00, 3, 0.01, 5, 704.52, reason.price-step", "684.00, -2, 5, 5, 670.00, reason.price-step",
            "3.00, 4, 5, 5, 3.00, reason.renewal-kept", "685.00, 0, 5, 0, 685.00, reason.price-step"})
    void of_percent_stepThenCapThenStepDown(String old, String percent, String step, String cap, String price,
            String last) {
        RenewalPrice renewal = RenewalPrice.of(usd(old), new Raise.ByPercent(Percent.of(percent)), usd(step),
                Percent.of(cap));

        assertThat(Amounts.plain(renewal.price())).isEqualTo(price);
        assertThat(renewal.difference().isEqualTo(usd(price).subtract(usd(old)))).isTrue();
        assertThat(renewal.how().reasons()).extracting(Phrase::key).first().isEqualTo("reason.renewal-percent");
        assertThat(renewal.how().reasons()).extracting(Phrase::key).last().isEqualTo(last);
        assertThat(HowReader.evaluate(renewal.how().text(USD))).isEqualByComparingTo(price);
    }

    @Test
    void of_capped_saysWhatItWouldHaveBeen() {
        RenewalPrice renewal = RenewalPrice.of(usd("684"), new Raise.ByPercent(Percent.of("6")), usd("5"),
                Percent.of("5"));

        assertThat(renewal.how().text(USD)).isEqualTo("step(684.00 USD x (100 % + 5 %); down; 5.00) = 715.00");
        assertThat(renewal.how().reasons()).containsExactly(
                Phrase.of("reason.renewal-percent", new Fact.Part(Percent.of("6"))),
                Phrase.of("reason.price-step", new Fact.Amount(usd("5"))),
                Phrase.of("reason.renewal-cap", new Fact.Amount(usd("725")), new Fact.Part(Percent.of("5"))));
    }

    /**
     * U.S. Bureau of Labor Statistics, guide to price escalation by the CPI: from 129.9 to 136.0 is 4.7 %. So 1,000.00 becomes
     * 1,046.96 to the cent (1000 x 136.0 / 129.9 = 1046.959...).
     */
    @Test
    void of_index_publishedEscalation() {
        Raise index = new Raise.ByIndex(Wording.same("CPI"), new BigDecimal("129.9"), new BigDecimal("136.0"));

        RenewalPrice renewal = RenewalPrice.of(usd("1000"), index, usd("0.01"), Percent.of("10"));

        assertThat(Amounts.plain(renewal.price())).isEqualTo("1046.96");
        assertThat(Amounts.number(renewal.difference()).movePointLeft(1).setScale(1, RoundingMode.HALF_UP))
                .isEqualByComparingTo("4.7");
    }

    /** By hand: 684 x 324.8 / 315.3 = 704.608..., to the step 705. The levels are invented. */
    @Test
    void of_index_asItMoved() {
        Raise index = new Raise.ByIndex(new Wording("consumer prices", "precios al consumidor"),
                new BigDecimal("315.3"), new BigDecimal("324.8"));

        RenewalPrice renewal = RenewalPrice.of(usd("684"), index, usd("5"), Percent.of("5"));

        assertThat(renewal.how().text(USD)).isEqualTo("step(684.00 USD x 324.8 / 315.3; nearest; 5.00) = 705.00");
        assertThat(renewal.how().reasons()).extracting(Phrase::key).containsExactly("reason.renewal-index",
                "reason.price-step");
        assertThat(renewal.how().reasons().getFirst().facts()).contains(
                new Fact.Measure(new BigDecimal("315.3"), ""), new Fact.Measure(new BigDecimal("324.8"), ""));
        assertThatIllegalArgumentException().isThrownBy(
                () -> new Raise.ByIndex(Wording.same("x"), BigDecimal.ZERO, BigDecimal.ONE));
    }

    @ParameterizedTest
    @CsvSource({"702.10, 700.00", "650.00, 650.00", "900.00, 715.00"})
    void of_repriced_atTodaysRatesWithinTheCap(String today, String price) {
        RenewalPrice renewal = RenewalPrice.of(usd("684"), new Raise.Repriced(usd(today)), usd("5"), Percent.of("5"));

        assertThat(Amounts.plain(renewal.price())).isEqualTo(price);
    }

    @Property(tries = 1000, seed = "715")
    void of_anyRaise_neverAboveTheCapNorLoweredByIt(@ForAll @LongRange(min = 0, max = 2_000_000) long old,
            @ForAll @IntRange(min = -500, max = 5000) int tenths, @ForAll @IntRange(min = 0, max = 300) int cap,
            @ForAll @IntRange(min = 1, max = 2000) int step) {
        BigDecimal before = BigDecimal.valueOf(old, 2);

        RenewalPrice renewal = RenewalPrice.of(usd(before.toPlainString()),
                new Raise.ByPercent(new Percent(BigDecimal.valueOf(tenths, 1))),
                usd(BigDecimal.valueOf(step, 2).toPlainString()), new Percent(BigDecimal.valueOf(cap, 1)));

        BigDecimal most = before.multiply(BigDecimal.valueOf(1000L + cap, 3));
        assertThat(Amounts.number(renewal.price())).isLessThanOrEqualTo(most);
        if (tenths >= 0 && BigDecimal.valueOf(step, 2).compareTo(new BigDecimal("0.01")) == 0) {
            assertThat(Amounts.number(renewal.price())).isGreaterThanOrEqualTo(before);
        }
        assertThat(HowReader.evaluate(renewal.how().text(USD)))
                .isEqualByComparingTo(Amounts.number(renewal.price()));
    }
}
