package icequill.agreement;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.HowReader;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Month;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;
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
        List<Installment> payments = Installments.of(YEAR, usd("1000"), billing, Set.of());

        assertThat(amounts(payments)).isEqualTo(amounts);
        assertThat(payments).allSatisfy(payment -> assertThat(HowReader.evaluate(payment.how().text(USD)))
                .isEqualByComparingTo(Amounts.number(payment.amount())));
    }

    /** Counted from the start each time: the 31st comes back after February and April. */
    @Test
    void installments_startOnThe31st_daysNeverDrift() {
        List<Installment> payments = Installments.of(new Term(LocalDate.of(2026, 1, 31), 12), usd("1200"),
                Billing.MONTHLY, Set.of());

        assertThat(payments.stream().map(payment -> payment.due().toString()).toList()).startsWith("2026-01-31",
                "2026-02-28", "2026-03-31", "2026-04-30", "2026-05-31");
        assertThat(payments.get(11).due()).isEqualTo("2026-12-31");
        assertThat(payments.get(11).number()).isEqualTo(12);
    }

    /** By hand: of 999.99 over five open months four cents are left over; a 31st comes back after June. */
    @Test
    void installments_openMonths_onlyWhileTheSiteIsOpen() {
        Set<Month> summer = EnumSet.range(Month.MAY, Month.SEPTEMBER);
        List<Installment> payments = Installments.of(new Term(LocalDate.of(2026, 3, 31), 12), usd("999.99"),
                Billing.OPEN_MONTHS, summer);

        assertThat(amounts(payments)).isEqualTo("200.00 200.00 200.00 200.00 199.99");
        assertThat(payments).extracting(payment -> payment.due().toString()).containsExactly("2026-05-31",
                "2026-06-30", "2026-07-31", "2026-08-31", "2026-09-30");
        assertThat(amounts(Installments.of(new Term(LocalDate.of(2026, 11, 15), 2), usd("10"), Billing.OPEN_MONTHS,
                summer))).isEqualTo("10.00");
        assertThat(amounts(Installments.of(new Term(LocalDate.of(2026, 6, 1), 4), usd("1000"), Billing.OPEN_MONTHS,
                Set.of()))).isEqualTo("250.00 250.00 250.00 250.00");
    }

    /**
     * By hand: 250.00 four times, of which three are due by the end of September. Of 400.00 the third, which is not billed, asks for 250.00
     * less, and the invoice of the second gives back 150.00; once that is done, nothing changes. The fourth is never asked for.
     */
    @Test
    void ended_givesBackFromWhatIsToBeBilledFirst_thenTheLatestInvoices() {
        PaymentChange before = PaymentChange.none(Installments.of(YEAR, usd("1000"), Billing.QUARTERLY, Set.of()));
        Invoiced two = new Invoiced(Map.of(1, usd("250"), 2, usd("250")));
        LocalDate last = LocalDate.of(2026, 9, 30);

        PaymentChange.Back back = before.givingBack(usd("400"), last, two);
        PaymentChange ended = before.ended(last, back, two, by(last));

        assertThat(before.paidBy(last, two, USD)).isEqualTo(usd("750"));
        assertThat(back.less()).containsExactly(new PaymentChange.GivenBack(3, usd("250")));
        assertThat(back.credited()).containsExactly(new PaymentChange.GivenBack(2, usd("150")));
        assertThat(amounts(ended.payments())).isEqualTo("250.00 250.00 0.00 0.00");
        assertThat(ended.payments()).extracting(ended::givenBack).containsExactly(usd("0"), usd("150"), usd("0"),
                usd("0"));
        assertThat(ended.payments()).allSatisfy(payment -> assertThat(HowReader.evaluate(payment.how().text(USD)))
                .isEqualByComparingTo(Amounts.number(payment.amount())));
        // the second given back in whole, to be billed anew: at 100.00
        assertThat(amounts(before.ended(last, back, new Invoiced(Map.of(1, usd("250"))), by(last)).payments()))
                .isEqualTo("250.00 100.00 0.00 0.00");
        // By hand: of 1000.00 at once 700.00 go back before it is billed; the invoice over 300.00 then gives nothing back.
        PaymentChange once = PaymentChange.none(Installments.of(YEAR, usd("1000"), Billing.YEARLY, Set.of()));
        PaymentChange.Back all = once.givingBack(usd("700"), last, Invoiced.NOTHING);
        Invoiced less = new Invoiced(Map.of(1, usd("300")));
        PaymentChange billed = once.ended(last, all, less, by(last));
        assertThat(amounts(billed.payments())).isEqualTo("300.00");
        assertThat(billed.givenBack(billed.payments().getFirst())).isEqualTo(usd("0"));
        assertThat(all.without(less).nets()).isEqualTo(Map.of(1, usd("1000")));
    }

    private static Predicate<Installment> by(LocalDate last) {
        return payment -> !payment.due().isAfter(last);
    }

    /**
     * What a new owner pays of a year from 1 June 2026. By hand, from 15 September: of the running quarter's 91 days 77 are left, so that 259/365 of
     * 1,075.00, 762.81, go by 3 x 77 : 3 x 91 : 3 x 91, or 77 : 91 : 91, which is 226.78, 268.02 and 268.01; of March 16 of 31 days are left, so that
     * 1,000.00 go by 16 : 31 : 31; on the first day of a stretch nothing is broken.
     */
    @ParameterizedTest
    @CsvSource({"QUARTERLY, 2026-09-15, 762.81, 226.78 268.02 268.01, 2026-09-15 2026-12-01 2027-03-01",
            "MONTHLY, 2027-03-16, 1000.00, 205.13 397.44 397.43, 2027-03-16 2027-04-01 2027-05-01",
            "MONTHLY, 2027-04-01, 1000.01, 500.01 500.00, 2027-04-01 2027-05-01",
            "YEARLY, 2027-05-31, 2.95, 2.95, 2027-05-31"})
    void restOfATerm_isPaidFromItsFirstDayOn(Billing billing, LocalDate from, String price, String amounts,
            String days) {
        List<Installment> payments = Installments.rest(new RestOfTerm("A-1", from, usd(price), Optional.empty()),
                new Term(LocalDate.of(2026, 6, 1), 12), billing, Set.of());

        assertThat(amounts(payments)).isEqualTo(amounts);
        assertThat(payments.stream().map(payment -> payment.due().toString()).collect(Collectors.joining(" ")))
                .isEqualTo(days);
        assertThat(payments).allSatisfy(payment -> assertThat(HowReader.evaluate(payment.how().text(USD)))
                .isEqualByComparingTo(Amounts.number(payment.amount())));
    }

    /** By hand: a month of the term from the 31st runs from 28 February to 30 March. */
    @ParameterizedTest
    @CsvSource({"2026-01-31, 2026-02-27", "2026-02-27, 2026-02-27", "2026-02-28, 2026-03-30", "2026-12-31, 2027-01-30"})
    void term_lastOfMonth_countedFromItsStart(LocalDate day, LocalDate last) {
        assertThat(new Term(LocalDate.of(2026, 1, 31), 12).lastOfMonth(day)).isEqualTo(last);
    }

    /** Seven months by the quarter: 3 + 3 + 1, so the last payment is a seventh. */
    @Test
    void installments_lastStretchShorter_paysForItsMonths() {
        assertThat(amounts(
                Installments.of(new Term(LocalDate.of(2026, 4, 1), 7), usd("700"), Billing.QUARTERLY, Set.of())))
                .isEqualTo("300.00 300.00 100.00");
    }

    /** Worked by hand: 17 May to 31 December is 229 days of 365; 420 x 229 / 365 = 263.506..., half to each, a cent over. */
    @Test
    void proration_machineAddedInMay_sharedOverTheTwoPaymentsLeft() {
        List<Installment> payments = Installments.of(YEAR, usd("1000"), Billing.QUARTERLY, Set.of());

        Proration added = Proration.of(YEAR, LocalDate.of(2026, 5, 17), usd("1000"), usd("1420"));

        assertThat(Amounts.plain(added.amount())).isEqualTo("263.51");
        assertThat(amounts(PaymentChange.of(added, PaymentChange.none(payments), Invoiced.NOTHING).payments()))
                .isEqualTo("250.00 250.00 381.76 381.75");
        assertThat(added.how().text(USD))
                .isEqualTo("round((1420.00 USD - 1000.00 USD) x 229 day / 365 day; proration; 2) = 263.51");
        assertThat(added.how().reasons()).containsExactly(Phrase.of("reason.days-left",
                new Fact.Day(LocalDate.of(2026, 5, 17)), new Fact.Day(LocalDate.of(2026, 12, 31)),
                Fact.number(229, "day"), Fact.number(365, "day")));
        assertThat(HowReader.evaluate(added.how().text(USD))).isEqualByComparingTo("263.51");
    }

    /** The same machine taken out again: the same amounts with the other sign. */
    @Test
    void proration_machineRemoved_negativeAndSharedAlike() {
        List<Installment> payments = Installments.of(YEAR, usd("1420"), Billing.QUARTERLY, Set.of());

        Proration removed = Proration.of(YEAR, LocalDate.of(2026, 5, 17), usd("1420"), usd("1000"));

        assertThat(amounts(PaymentChange.of(removed, PaymentChange.none(payments), Invoiced.NOTHING).payments()))
                .isEqualTo("355.00 355.00 223.24 223.25");
    }

    /**
     * By day counts worked by hand with each day counted: 1,200.00 a year for 136 days of 365 is 447.12 (18 August to 31
     * December has as many days as 1 January to 16 May); 250.00 a month from 10 April is 21 days of 30, 175.00.
     */
    @ParameterizedTest
    @CsvSource({"2026-01-01, 12, 2026-08-18, 1200.00, 447.12", "2026-04-01, 1, 2026-04-10, 250.00, 175.00"})
    void proration_dayCounts_inclusive(LocalDate start, int months, LocalDate from, String price, String left) {
        Term term = new Term(start, months);

        assertThat(Amounts.plain(Proration.of(term, from, usd("0"), usd(price)).amount())).isEqualTo(left);
    }

    @Test
    void proration_noPaymentLeft_onePaymentOnTheDay() {
        List<Installment> payments = Installments.of(YEAR, usd("1000"), Billing.YEARLY, Set.of());

        Proration added = Proration.of(YEAR, LocalDate.of(2026, 12, 31), usd("1000"), usd("1365"));

        assertThat(PaymentChange.of(added, PaymentChange.none(payments), Invoiced.NOTHING).payments()).last()
                .satisfies(payment -> {
                    assertThat(payment.number()).isEqualTo(2);
                    assertThat(payment.due()).isEqualTo("2026-12-31");
                    assertThat(Amounts.plain(payment.amount())).isEqualTo("1.00");
                });
    }

    /**
     * Worked by hand: twelve payments of 140.00 from June, four of them invoiced; 178.77 added from 15 August is borne by the
     * eight that are left: 22.35 five times, 22.34 three times. The fifth, invoiced with its share, changes nothing.
     */
    @Test
    void change_recordedAfterAPaymentWasInvoiced_onlyTheOthersBearIt() {
        Term term = new Term(LocalDate.of(2026, 6, 1), 12);
        List<Installment> payments = Installments.of(term, usd("1680"), Billing.MONTHLY, Set.of());
        Proration added = Proration.of(term, LocalDate.of(2026, 8, 15), usd("1665"), usd("1890"));
        Map<Integer, MonetaryAmount> nets = new HashMap<>();
        IntStream.rangeClosed(1, 4).forEach(number -> nets.put(number, usd("140")));

        String expected = "140.00 140.00 140.00 140.00 162.35 162.35 162.35 162.35 162.35 162.34 162.34 162.34";
        assertThat(amounts(PaymentChange.of(added, PaymentChange.none(payments), new Invoiced(nets)).payments()))
                .isEqualTo(expected);
        nets.put(5, usd("162.35"));
        assertThat(amounts(PaymentChange.of(added, PaymentChange.none(payments), new Invoiced(nets)).payments()))
                .isEqualTo(expected);
    }

    /**
     * Worked by hand: 1,420.00 paid at once; a machine less from 17 May gives back 263.51, by a credit note for the one invoice.
     * By the quarter, with 355.00 to come once and 1,065.00 invoiced, -482.50 takes that whole payment, and 127.50 of the third.
     */
    @Test
    void change_givesBackMoreThanThePaymentsLeft_creditNotesForTheLatestInvoices() {
        Proration removed = Proration.of(YEAR, LocalDate.of(2026, 5, 17), usd("1420"), usd("1000"));
        PaymentChange once = PaymentChange.of(removed,
                PaymentChange.none(Installments.of(YEAR, usd("1420"), Billing.YEARLY, Set.of())),
                Invoiced.NOTHING);

        assertThat(amounts(once.payments())).isEqualTo("1420.00");
        assertThat(once.givenBack()).containsExactly(new PaymentChange.GivenBack(1, usd("263.51")));

        Proration most = new Proration(LocalDate.of(2026, 9, 1), usd("-482.50"), removed.how());
        PaymentChange quarterly = PaymentChange.of(most,
                PaymentChange.none(Installments.of(YEAR, usd("1420"), Billing.QUARTERLY, Set.of())),
                new Invoiced(Map.of(1, usd("355"), 2, usd("355"), 3, usd("355"))));

        assertThat(amounts(quarterly.payments())).isEqualTo("355.00 355.00 355.00 0.00");
        assertThat(quarterly.givenBack()).containsExactly(new PaymentChange.GivenBack(3, usd("127.50")));
    }

    /** Worked by hand: of the third 355.00 127.50 went back before, so of 300.00 it gives 227.50 and the second 72.50. */
    @Test
    void change_afterOneThatGaveBack_givesBackNoPaymentTwice() {
        Proration removed = Proration.of(YEAR, LocalDate.of(2026, 5, 17), usd("1420"), usd("1000"));
        Invoiced three = new Invoiced(Map.of(1, usd("355"), 2, usd("355"), 3, usd("355")));
        PaymentChange first = PaymentChange.of(new Proration(LocalDate.of(2026, 9, 1), usd("-482.50"), removed.how()),
                PaymentChange.none(Installments.of(YEAR, usd("1420"), Billing.QUARTERLY, Set.of())), three);

        PaymentChange second = PaymentChange.of(new Proration(LocalDate.of(2026, 11, 1), usd("-300"), removed.how()),
                first, three);

        assertThat(second.givenBack()).containsExactly(new PaymentChange.GivenBack(3, usd("227.50")),
                new PaymentChange.GivenBack(2, usd("72.50")));
        assertThat(second.payments()).extracting(second::givenBack)
                .containsExactly(usd("0"), usd("72.50"), usd("355"), usd("0"));
    }

    /**
     * Worked by hand: three payments of 100.00 to come. 10.01 is 3.34, 3.34, 3.33 more; then 5.00 is 1.67, 1.67, 1.66 more. What was named so is
     * what is asked for, whichever of them was billed by then, and with which of both changes.
     */
    @ParameterizedTest
    @CsvSource({"'', 105.01 105.01 104.99", "105.01, 105.01 105.01 104.99", "105.01 105.01, 105.01 105.01 104.99",
            "103.34, 103.34 105.84 105.83", "100.00, 100.00 107.51 107.50", "103.34 105.84, 103.34 105.84 105.83"})
    void changes_namedPaymentsStayAsTheyAreBilled(String billed, String expected) {
        List<Installment> payments = Installments.of(new Term(YEAR.start(), 3), usd("300"), Billing.MONTHLY, Set.of());
        Map<Integer, MonetaryAmount> nets = new HashMap<>();
        Stream.of(billed.split(" ")).filter(net -> !net.isEmpty()).forEach(net -> nets.put(nets.size() + 1, usd(net)));

        assertThat(amounts(twice(payments, "10.01", "5.00", new Invoiced(nets)).payments())).isEqualTo(expected);
    }

    /**
     * Worked by hand: of three payments of 100.00 after one that is billed, 320.00 take all, and 20.00 of the billed one; 30.00 later are 10.00
     * each. That these are billed gives nothing else back.
     */
    @Test
    void changes_billedLater_giveNothingElseBack() {
        List<Installment> payments = Installments.of(new Term(LocalDate.of(2025, 12, 1), 4), usd("400"),
                Billing.MONTHLY, Set.of());
        Map<Integer, MonetaryAmount> nets = new HashMap<>(Map.of(1, usd("100")));

        for (int number = 2; number <= 5; number++) {
            PaymentChange after = twice(payments, "-320", "30", new Invoiced(nets));
            assertThat(amounts(after.payments())).isEqualTo("100.00 10.00 10.00 10.00");
            assertThat(payments).extracting(after::givenBack).containsExactly(usd("20"), usd("0"), usd("0"), usd("0"));
            nets.put(Math.min(number, 4), usd("10"));
        }
    }

    /** Worked by hand: an invoice of 106.00 has 0.99 more than its shares, which are 0.50 and 0.49 less for the others. */
    @Test
    void changes_anInvoiceOfItsOwn_isEvenedOutByTheOthers() {
        List<Installment> payments = Installments.of(new Term(YEAR.start(), 3), usd("300"), Billing.MONTHLY, Set.of());

        assertThat(amounts(twice(payments, "10.01", "5.00", new Invoiced(Map.of(1, usd("106.00")))).payments()))
                .isEqualTo("106.00 104.51 104.50");
    }

    /** Both from the first of January on. */
    private static PaymentChange twice(List<Installment> payments, String first, String second, Invoiced invoiced) {
        Proration one = change(first);
        Proration other = change(second);
        return PaymentChange.of(other, PaymentChange.of(one, PaymentChange.none(payments), invoiced), invoiced)
                .settled(other, invoiced);
    }

    private static Proration change(String amount) {
        return new Proration(YEAR.start(), usd(amount), Explanation.of(Figure.term(0, "")));
    }

    /** An extra payment for a change after the last one, invoiced already, is not asked for again. */
    @Test
    void change_itsExtraPaymentInvoiced_staysAsItIs() {
        Proration added = Proration.of(YEAR, LocalDate.of(2026, 12, 31), usd("1000"), usd("1365"));

        PaymentChange change = PaymentChange.of(added,
                PaymentChange.none(Installments.of(YEAR, usd("1000"), Billing.YEARLY, Set.of())),
                new Invoiced(Map.of(1, usd("1000"), 2, usd("1"))));

        assertThat(amounts(change.payments())).isEqualTo("1000.00 1.00");
        assertThat(change.givenBack()).isEmpty();
    }

    @Property(tries = 500, seed = "8333")
    void installments_anyTermAndPrice_addUpAndDifferByAStretchOnly(@ForAll @IntRange(min = 1, max = 120) int months,
            @ForAll @LongRange(min = 0, max = 10_000_000) long cents, @ForAll Billing billing,
            @ForAll @IntRange(min = 0, max = 1500) int day) {
        Term term = new Term(LocalDate.of(2026, 1, 1).plusDays(day), months);

        List<Installment> payments = Installments.of(term, usd(BigDecimal.valueOf(cents, 2).toPlainString()), billing,
                Set.of());

        assertThat(Amounts.number(Amounts.sum(payments.stream().map(Installment::amount).toList(), USD)))
                .isEqualByComparingTo(BigDecimal.valueOf(cents, 2));
        assertThat(payments).extracting(Installment::due).isSorted().doesNotHaveDuplicates()
                .allMatch(term::contains);
    }

    @Property(tries = 500, seed = "26351")
    void change_any_whatIsBilledLessWhatIsGivenBackIsThePrice(@ForAll @IntRange(min = 0, max = 364) int day,
            @ForAll @LongRange(min = 0, max = 5_000_000) long before,
            @ForAll @LongRange(min = 0, max = 5_000_000) long after, @ForAll Billing billing,
            @ForAll @IntRange(min = 0, max = 12) int invoiced) {
        List<Installment> payments = Installments.of(YEAR, usd("900"), billing, Set.of());
        Map<Integer, MonetaryAmount> nets = new HashMap<>();
        payments.stream().filter(payment -> payment.number() <= invoiced)
                .forEach(payment -> nets.put(payment.number(), payment.amount()));
        Proration change = Proration.of(YEAR, YEAR.start().plusDays(day),
                usd(BigDecimal.valueOf(before, 2).toPlainString()), usd(BigDecimal.valueOf(after, 2).toPlainString()));
        MonetaryAmount least = change.amount().isLessThan(usd("-900")) ? usd("-900") : change.amount();

        PaymentChange changed = PaymentChange.of(new Proration(change.from(), least, change.how()),
                PaymentChange.none(payments),
                new Invoiced(nets));

        MonetaryAmount billed = Amounts.sum(changed.payments().stream().map(Installment::amount).toList(), USD);
        MonetaryAmount back = Amounts.sum(
                changed.givenBack().stream().map(PaymentChange.GivenBack::amount).toList(), USD);
        assertThat(billed.subtract(back).isEqualTo(usd("900").add(least))).isTrue();
        assertThat(changed.payments()).allMatch(payment -> payment.amount().isPositiveOrZero());
        assertThat(changed.payments()).filteredOn(payment -> nets.containsKey(payment.number()))
                .allMatch(payment -> payment.amount().isEqualTo(nets.get(payment.number())));
        assertThat(Amounts.number(change.amount()).abs())
                .isLessThanOrEqualTo(BigDecimal.valueOf(Math.abs(after - before), 2));
    }

    private static String amounts(List<Installment> payments) {
        return payments.stream().map(payment -> Amounts.plain(payment.amount())).collect(Collectors.joining(" "));
    }
}
