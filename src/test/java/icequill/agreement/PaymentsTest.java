package icequill.agreement;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import icequill.explain.HowReader;
import icequill.money.Amounts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Terms, installments and changes in mid-term. */
class PaymentsTest {

    private static final Term YEAR = new Term(LocalDate.of(2026, 1, 1), 12);

    /** By the calendar: first and last day counted. */
    @ParameterizedTest
    @CsvSource({"2026-01-01, 12, 2026-12-31, 365", "2024-01-01, 12, 2024-12-31, 366", "2026-01-31, 1, 2026-02-27, 28",
            "2024-02-29, 12, 2025-02-27, 365", "2026-04-10, 24, 2028-04-09, 731"})
    void term_lastDayAndDays_byTheCalendar(LocalDate start, int months, LocalDate last, long days) {
        Term term = new Term(start, months);

        assertThat(term.lastDay()).isEqualTo(last);
        assertThat(term.days()).isEqualTo(days);
        assertThat(term.daysFrom(last)).isEqualTo(1);
        assertThatIllegalArgumentException().isThrownBy(() -> term.daysFrom(last.plusDays(1)));
        assertThatIllegalArgumentException().isThrownBy(() -> term.daysFrom(start.minusDays(1)));
    }

    /** Largest remainder, left-over cents first, worked by hand: 1,000.00 / 12 is 83.33 with four cents over. */
    @ParameterizedTest
    @CsvSource({"YEARLY, 1000.00", "QUARTERLY, 250.00 250.00 250.00 250.00",
            "MONTHLY, 83.34 83.34 83.34 83.34 83.33 83.33 83.33 83.33 83.33 83.33 83.33 83.33"})
    void installments_thousandAYear_leftOverCentsFirst(Billing billing, String amounts) {
        List<Installment> payments = Installments.of(YEAR, usd("1000"), billing);

        assertThat(amounts(payments)).isEqualTo(amounts);
        assertThat(payments).allSatisfy(payment -> assertThat(HowReader.evaluate(payment.how().text(USD)))
                .isEqualByComparingTo(Amounts.number(payment.amount())));
    }

    /** Counted from the start each time: the 31st comes back after February and April. */
    @Test
    void installments_startOnThe31st_daysNeverDrift() {
        List<Installment> payments = Installments.of(new Term(LocalDate.of(2026, 1, 31), 12), usd("1200"),
                Billing.MONTHLY);

        assertThat(payments.stream().map(payment -> payment.due().toString()).toList()).startsWith("2026-01-31",
                "2026-02-28", "2026-03-31", "2026-04-30", "2026-05-31");
        assertThat(payments.get(11).due()).isEqualTo("2026-12-31");
        assertThat(payments.get(11).number()).isEqualTo(12);
    }

    /** Seven months by the quarter: 3 + 3 + 1, so the last payment is a seventh. */
    @Test
    void installments_lastStretchShorter_paysForItsMonths() {
        assertThat(amounts(Installments.of(new Term(LocalDate.of(2026, 4, 1), 7), usd("700"), Billing.QUARTERLY)))
                .isEqualTo("300.00 300.00 100.00");
    }

    /** Worked by hand: 17 May to 31 December is 229 days of 365; 420 x 229 / 365 = 263.506..., half to each, a cent over. */
    @Test
    void proration_machineAddedInMay_sharedOverTheTwoPaymentsLeft() {
        List<Installment> payments = Installments.of(YEAR, usd("1000"), Billing.QUARTERLY);

        Proration added = Proration.of(YEAR, LocalDate.of(2026, 5, 17), usd("1000"), usd("1420"), payments);

        assertThat(Amounts.plain(added.amount())).isEqualTo("263.51");
        assertThat(amounts(added.shares())).isEqualTo("131.76 131.75");
        assertThat(added.shares()).extracting(Installment::due).containsExactly(LocalDate.of(2026, 7, 1),
                LocalDate.of(2026, 10, 1));
        assertThat(added.shares()).extracting(Installment::number).containsExactly(3, 4);
        assertThat(added.how().text(USD))
                .isEqualTo("round((1420.00 USD - 1000.00 USD) x 229 day / 365 day; proration; 2)"
                        + " = 263.51 {reason.days-left 2026-05-17 2026-12-31 229day 365day}");
        assertThat(HowReader.evaluate(added.how().text(USD))).isEqualByComparingTo("263.51");
    }

    /** The same machine taken out again: the same amounts with the other sign. */
    @Test
    void proration_machineRemoved_negativeAndSharedAlike() {
        List<Installment> payments = Installments.of(YEAR, usd("1420"), Billing.QUARTERLY);

        Proration removed = Proration.of(YEAR, LocalDate.of(2026, 5, 17), usd("1420"), usd("1000"), payments);

        assertThat(amounts(removed.shares())).isEqualTo("-131.76 -131.75");
    }

    /**
     * By day counts worked by hand with each day counted: 1,200.00 a year for 136 days of 365 is 447.12 (18 August to 31
     * December has as many days as 1 January to 16 May); 250.00 a month from 10 April is 21 days of 30, 175.00.
     */
    @ParameterizedTest
    @CsvSource({"2026-01-01, 12, 2026-08-18, 1200.00, 447.12", "2026-04-01, 1, 2026-04-10, 250.00, 175.00"})
    void proration_dayCounts_inclusive(LocalDate start, int months, LocalDate from, String price, String left) {
        Term term = new Term(start, months);

        assertThat(Amounts.plain(Proration.of(term, from, usd("0"), usd(price), List.of()).amount())).isEqualTo(left);
    }

    @Test
    void proration_noPaymentLeft_onePaymentOnTheDay() {
        List<Installment> payments = Installments.of(YEAR, usd("1000"), Billing.YEARLY);

        Proration added = Proration.of(YEAR, LocalDate.of(2026, 12, 31), usd("1000"), usd("1365"), payments);

        assertThat(added.shares()).singleElement().satisfies(payment -> {
            assertThat(payment.number()).isEqualTo(2);
            assertThat(payment.due()).isEqualTo("2026-12-31");
            assertThat(Amounts.plain(payment.amount())).isEqualTo("1.00");
        });
    }

    @Property(tries = 500, seed = "8333")
    void installments_anyTermAndPrice_addUpAndDifferByAStretchOnly(@ForAll @IntRange(min = 1, max = 120) int months,
            @ForAll @LongRange(min = 0, max = 10_000_000) long cents, @ForAll Billing billing,
            @ForAll @IntRange(min = 0, max = 1500) int day) {
        Term term = new Term(LocalDate.of(2026, 1, 1).plusDays(day), months);

        List<Installment> payments = Installments.of(term, usd(BigDecimal.valueOf(cents, 2).toPlainString()), billing);

        assertThat(Amounts.number(Amounts.sum(payments.stream().map(Installment::amount).toList(), USD)))
                .isEqualByComparingTo(BigDecimal.valueOf(cents, 2));
        assertThat(payments).extracting(Installment::due).isSorted().doesNotHaveDuplicates()
                .allMatch(term::contains);
    }

    @Property(tries = 500, seed = "26351")
    void proration_anyChange_sharesAddUp(@ForAll @IntRange(min = 0, max = 364) int day,
            @ForAll @LongRange(min = 0, max = 5_000_000) long before,
            @ForAll @LongRange(min = 0, max = 5_000_000) long after, @ForAll Billing billing) {
        Proration change = Proration.of(YEAR, YEAR.start().plusDays(day),
                usd(BigDecimal.valueOf(before, 2).toPlainString()), usd(BigDecimal.valueOf(after, 2).toPlainString()),
                Installments.of(YEAR, usd("900"), billing));

        assertThat(Amounts.sum(change.shares().stream().map(Installment::amount).toList(), USD)
                .isEqualTo(change.amount())).isTrue();
        assertThat(Amounts.number(change.amount()).abs())
                .isLessThanOrEqualTo(BigDecimal.valueOf(Math.abs(after - before), 2));
    }

    private static String amounts(List<Installment> payments) {
        return payments.stream().map(payment -> Amounts.plain(payment.amount())).collect(Collectors.joining(" "));
    }
}
