package icequill.agreement;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import icequill.explain.Fact;
import icequill.explain.HowReader;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is given back when an agreement ends early. */
class RefundTest {

    private static final Term TERM = new Term(LocalDate.of(2026, 6, 1), 12);
    private static final LocalDate DECEMBER = LocalDate.of(2026, 12, 31);

    /**
     * Worked by hand: 1,075.00 over 365 days, of which 1 June to 31 December has 214: 630.27 earned. By visits of 342.04, 254.79,
     * 342.04, 254.79 at list: 308.04, 229.46, 308.04, 229.46; the last is not done.
     */
    @ParameterizedTest
    @CsvSource({"DAYS, 444.73", "VISITS, 229.46"})
    void refund_allPaidThreeOfFourVisitsDone_byTheShopsMethod(Earning earning, String back) {
        Refund refund = Refund.of(List.of(prepaid("1075", 3)), earning, DECEMBER, usd("1075"));

        assertThat(Amounts.plain(refund.amount())).isEqualTo(back);
        assertThat(HowReader.evaluate(refund.how().text(USD))).isEqualByComparingTo(back);
    }

    /** 1,680.00 in twelve payments, ended after four: 560.00 paid, 122 of 365 days earned 561.53. */
    @ParameterizedTest
    @CsvSource({"DAYS, 561.53", "VISITS, 840.00"})
    void refund_paidByTheMonth_nothing(Earning earning, String earned) {
        Prepaid hotel = new Prepaid(TERM, List.of(new Prepaid.Part(usd("1680"), TERM.start())),
                List.of(new Prepaid.VisitShare(TERM.start(), usd("900"), true),
                        new Prepaid.VisitShare(LocalDate.of(2026, 12, 1), usd("900"), false)));

        Refund refund = Refund.of(List.of(hotel), earning, LocalDate.of(2026, 9, 30), usd("560"));

        assertThat(Amounts.plain(refund.amount())).isEqualTo("0.00");
        assertThat(refund.how().reasons()).contains(
                Phrase.of("reason.refund-none", new Fact.Amount(usd(earned))));
    }

    /** A machine more from 1 December on, 182 days, for 182.00: by 31 December 31.00 of it is earned, besides 630.27. */
    @Test
    void refund_changeInMidTerm_earnedFromItsOwnDay() {
        Prepaid changed = new Prepaid(TERM, List.of(new Prepaid.Part(usd("1075"), TERM.start()),
                new Prepaid.Part(usd("182"), LocalDate.of(2026, 12, 1))), prepaid("1075", 3).visits());

        assertThat(Amounts.plain(Refund.of(List.of(changed), Earning.DAYS, DECEMBER, usd("1257")).amount()))
                .isEqualTo("595.73");
        // Of the two visits from then on, 342.04 and 254.79, the first is done: 182 x 254.79 / 596.83 = 77.70 is left of it.
        assertThat(Amounts.plain(Refund.of(List.of(changed), Earning.VISITS, DECEMBER, usd("1257")).amount()))
                .isEqualTo("307.16");
    }

    @Test
    void refund_onTheLastDay_everythingIsEarned() {
        assertThat(Refund.of(List.of(prepaid("1075", 4)), Earning.DAYS, TERM.lastDay(), usd("1075")).amount().isZero())
                .isTrue();
        assertThat(
                Refund.of(List.of(prepaid("1075", 4)), Earning.VISITS, TERM.lastDay(), usd("1075")).amount().isZero())
                .isTrue();
        assertThatIllegalArgumentException().isThrownBy(
                () -> Refund.of(List.of(prepaid("1075", 4)), Earning.DAYS, TERM.renewal(), usd("1075")));
    }

    @Property(tries = 300, seed = "44473")
    void refund_any_betweenNothingAndWhatWasPaid(@ForAll @LongRange(min = 0, max = 1_000_000) long price,
            @ForAll @LongRange(min = 0, max = 1_000_000) long paid, @ForAll @IntRange(min = 0, max = 364) int day,
            @ForAll @IntRange(min = 0, max = 4) int done, @ForAll Earning earning) {
        Refund refund = Refund.of(List.of(prepaid(String.valueOf(price), done)), earning, TERM.start().plusDays(day),
                usd(String.valueOf(paid)));

        assertThat(refund.amount().isNegative()).isFalse();
        assertThat(refund.amount().isGreaterThan(usd(String.valueOf(paid)))).isFalse();
    }

    private static Prepaid prepaid(String price, int done) {
        List<String> lists = List.of("342.04", "254.79", "342.04", "254.79");
        return new Prepaid(TERM, List.of(new Prepaid.Part(usd(price), TERM.start())),
                IntStream.range(0, 4).mapToObj(i -> new Prepaid.VisitShare(
                        TERM.start().plusMonths(3L * i), usd(lists.get(i)), i < done)).toList());
    }
}
