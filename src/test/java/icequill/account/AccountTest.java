package icequill.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.explain.HowReader;
import icequill.money.Amounts;
import icequill.money.Currencies;
import icequill.money.Percent;
import icequill.party.Wording;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is owed, for how long, and what may be asked for it. */
class AccountTest {

    private static final LocalDate DAY = LocalDate.of(2026, 8, 31);
    private static final CurrencyUnit USD = Currencies.find("USD").orElseThrow();

    /**
     * Accounting Principles: A Business Perspective (open textbook), chapter 9, exhibit 77: 560,000 not yet due, 252,000 up
     * to 30 days past due, 4,000 up to 60, 800 up to 90 and 11,200 beyond. Each sum is split over both ends of its bracket.
     */
    @Test
    void ageing_publishedSchedule_sumsByBracket() {
        Ageing ageing = ageing(Ageing.USUAL, "-30 500000", "0 60000", "1 200000", "30 52000", "31 3000", "60 1000",
                "61 300", "90 500", "91 11000", "400 200");

        assertThat(Amounts.plain(ageing.notYetDue())).isEqualTo("560000.00");
        assertThat(ageing.pastDue()).extracting(Amounts::plain).containsExactly("252000.00", "4000.00", "800.00",
                "11200.00");
        assertThat(Amounts.plain(ageing.late())).isEqualTo("268000.00");
        assertThat(Amounts.plain(ageing.sum())).isEqualTo("828000.00");
    }

    @Test
    void ageing_otherBounds_otherBrackets() {
        assertThat(ageing(List.of(14), "14 1", "15 2").pastDue()).extracting(Amounts::plain).containsExactly("1.00",
                "2.00");
    }

    /**
     * Directive 2011/7/EU: reference rate and 8 points, and 40 for each late payment; Late Payment of Commercial Debts
     * (Interest) Act 1998: 40 below 1,000, 70 below 10,000, 100 from there. Other rows by hand: 1200 x 0.1015 x 45 / 360 =
     * 15.225; 35 of 45 days, 11.68; 0.01 short of the next step.
     */
    @ParameterizedTest(name = "{0} {1} at {2} %, {3} days")
    @CsvSource({"EUR, 1200.00, 10.15, 45, 365, 0, 15.02, 40.00", "GBP, 1000.00, 12, 30, 365, 0, 9.86, 70.00",
            "EUR, 1200.00, 10.15, 45, 360, 0, 15.23, 40.00", "EUR, 1200.00, 10.15, 45, 365, 10, 11.68, 40.00",
            "GBP, 999.99, 12, 30, 365, 0, 9.86, 40.00", "GBP, 10000.00, 12, 30, 365, 0, 98.63, 100.00",
            "GBP, 1000.00, 12, 5, 365, 5, 0.00, 70.00"})
    void late_publishedCases_asPublished(String code, BigDecimal principal, String rate, int days, int dayBase,
            int grace, String interest, String fixed) {
        CurrencyUnit currency = Currencies.find(code).orElseThrow();
        List<LateTerms.Fixed> steps = code.equals("EUR")
                ? List.of(step("0", "40", currency))
                : List.of(step("0", "40", currency), step("1000", "70", currency), step("10000", "100", currency));
        LateTerms terms = new LateTerms(Percent.of(rate), Percent.of("20"), dayBase, grace, 1, steps,
                Wording.same("terms"));
        MonetaryAmount late = Amounts.of(principal, currency);

        String how = terms.interest(late, days).text(currency);

        assertThat(Amounts.plain(terms.interest(late, days).amount(currency))).isEqualTo(interest);
        assertThat(HowReader.evaluate(how)).isEqualByComparingTo(interest);
        assertThat(terms.fixedFor(late)).map(Amounts::plain).contains(fixed);
    }

    @Test
    void late_rateAboveItsCap_isABug() {
        assertThatThrownBy(() -> new LateTerms(Percent.of("17"), Percent.of("16"), 365, 0, 1, List.of(),
                Wording.same("terms"))).hasMessageContaining("rate is 17, must be from 0 to 16");
    }

    @Test
    void fixed_lessThanTheFirstStep_none() {
        assertThat(terms(0, step("100", "40", USD)).fixedFor(usd("99.99"))).isEmpty();
    }

    /** 1000 - 300 paid - 150 credited (of 200, of which 50 went back); the payment of the next day does not count. */
    @Test
    void standing_paymentsAndCredits_openAndBalanceAgree() {
        Account account = new Account(USD,
                List.of(invoice("A", 40, "1000"), invoice("B", -20, "80")),
                List.of(credit("C", 30, "200", "A", back(10, "50"))),
                List.of(paid("A", 35, "300"), paid("A", -1, "100"), payment(2, "15"), payment(-2, "7")));

        Standing standing = Standing.of(account, DAY);

        assertThat(standing.owed()).extracting(owed -> owed.number() + " " + owed.daysLate() + " "
                + Amounts.plain(owed.paid()) + " " + Amounts.plain(owed.credited()) + " " + Amounts.plain(owed.open()))
                .containsExactly("A 40 300.00 150.00 550.00", "B -20 0.00 0.00 80.00");
        assertThat(standing.credits()).extracting(open -> Amounts.plain(open.open())).containsExactly("15.00");
        assertThat(Amounts.plain(standing.balance())).isEqualTo("615.00");
        assertThat(standing.movements()).extracting(movement -> movement.kind() + " "
                + Amounts.plain(movement.amount())).containsExactly("INVOICE 1000.00", "PAYMENT -300.00",
                        "CREDIT_NOTE -200.00", "INVOICE 80.00", "PAID_BACK 50.00", "ON_ACCOUNT -15.00");
        assertThat(standing.later()).extracting(movement -> Amounts.plain(movement.amount()))
                .containsExactly("-100.00", "-7.00");
    }

    /**
     * 1,000.00 and 88.75 of tax: 1,068.75 is enough within 20 days of the invoice, which is dated 30 days before it was due. Where the tax is due
     * on what is paid alone, 1,066.98 is: 21.77 are taken off, 1.77 of them tax.
     */
    @ParameterizedTest
    @CsvSource({"20, 20.00, 0.00, 1068.75, none, -20.00 0.00", "19, 20.00, 0.00, 1068.75, 20.00, none",
            "20, 20.00, 0.00, 1068.74, 20.01, none", "20, 21.77, 1.77, 1066.98, none, -21.77 -1.77",
            "20, 20.00, 0.00, 1080.00, none, -8.75 0.00", "20, 20.00, 0.00, 1088.75, none, none"})
    void standing_paidEarly_whatWasOfferedIsTakenOff(int daysAgo, String off, String tax, String paid, String open,
            String taken) {
        Account account = new Account(USD, List.of(early(off, tax)), List.of(), List.of(paid("A", daysAgo, paid)));

        Standing standing = Standing.of(account, DAY);

        assertThat(standing.owed().stream().map(owed -> Amounts.plain(owed.open())).findFirst().orElse("none"))
                .isEqualTo(open);
        assertThat(standing.movements().stream().filter(movement -> movement.kind() == Movement.Kind.EARLY_PAYMENT)
                .map(movement -> Amounts.plain(movement.amount()) + " "
                        + Amounts.plain(movement.tax().orElseThrow()))
                .findFirst().orElse("none")).isEqualTo(taken);
        assertThat(Amounts.plain(standing.balance())).isEqualTo(open.equals("none") ? "0.00" : open);
    }

    /** Two payments together, the second on the last day: nothing is taken off before it, and nothing twice. */
    @Test
    void standing_paidEarlyInTwoParts_takenOffOnTheDayOfTheSecond() {
        Account account = new Account(USD, List.of(early("20", "0")), List.of(),
                List.of(paid("A", 25, "1000"), paid("A", 20, "68.75")));

        assertThat(Standing.of(account, DAY.minusDays(21)).owed()).extracting(owed -> Amounts.plain(owed.open()) + " "
                + Amounts.plain(owed.offer().orElseThrow().sum())).containsExactly("88.75 68.75");
        assertThat(Standing.of(account, DAY.minusDays(20)).owed()).isEmpty();
        assertThat(Standing.of(account, DAY).movements()).extracting(Movement::kind).containsExactly(
                Movement.Kind.INVOICE, Movement.Kind.PAYMENT, Movement.Kind.PAYMENT, Movement.Kind.EARLY_PAYMENT);
    }

    /** Of 1,088.75 a credit note gave 217.75 back: 20.00 x 871.00 / 1,088.75 = 16.00 are taken off, and 855.00 is enough. */
    @Test
    void standing_paidEarlyAfterACredit_nothingIsTakenOffWhatWasGivenBack() {
        Standing standing = Standing.of(new Account(USD, List.of(early("20", "0")),
                List.of(credit("C", 25, "217.75", "A")), List.of(paid("A", 20, "855"))), DAY);

        assertThat(standing.owed()).isEmpty();
        assertThat(standing.credits()).isEmpty();
        assertThat(Amounts.plain(standing.balance())).isEqualTo("0.00");
        assertThat(Amounts.plain(standing.movements().getLast().amount())).isEqualTo("-16.00");
    }

    /** Two credit notes for one invoice that is paid in part: the earlier goes first, what is left of the later stays. */
    @Test
    void standing_creditsAboveWhatIsOpen_restStaysACredit() {
        Standing standing = Standing.of(new Account(USD, List.of(invoice("A", 40, "100")),
                List.of(credit("late", 5, "40", "A"), credit("early", 9, "50", "A")), List.of(paid("A", 35, "30"))),
                DAY);

        assertThat(standing.owed()).isEmpty();
        assertThat(standing.credits()).extracting(open -> open.number().orElseThrow() + " "
                + Amounts.plain(open.open())).containsExactly("late 20.00");
        assertThat(Amounts.plain(standing.balance())).isEqualTo("-20.00");
    }

    /** 120 to the customer's credit: 100 off what is longest due, 20 off the next; interest on the rest alone. */
    @Test
    void claims_credit_setOffFromTheLongestDue() {
        Standing standing = Standing.of(new Account(USD,
                List.of(invoice("new", 10, "500"), invoice("old", 50, "100"), invoice("next", -1, "70")), List.of(),
                List.of(payment(3, "120"))), DAY);

        Claims claims = Claims.of(standing, Optional.of(terms(0, step("0", "40", USD))));

        assertThat(claims.claims()).extracting(claim -> claim.owed().number() + " " + Amounts.plain(claim.setOff())
                + " " + Amounts.plain(claim.asked()) + " " + Amounts.plain(claim.onTop()))
                .containsExactly("old 100.00 0.00 0.00", "new 20.00 480.00 41.58");
        assertThat(Amounts.plain(claims.total())).isEqualTo("521.58");
    }

    /** Of 500, 200 are disputed; the other invoice wholly. Neither bears interest, and no part of it is asked for. */
    @Test
    void claims_disputed_listedApartAndNotAskedFor() {
        Invoiced part = disputed(invoice("part", 10, "500"), Optional.of(usd("200")));
        Invoiced whole = disputed(invoice("whole", 20, "90"), Optional.empty());
        Standing standing = Standing.of(new Account(USD, List.of(part, whole), List.of(), List.of()), DAY);

        Claims claims = Claims.of(standing, Optional.of(terms(0)));

        assertThat(claims.claims()).extracting(claim -> claim.owed().number() + " " + Amounts.plain(claim.asked())
                + " " + Amounts.plain(claim.onTop())).containsExactly("part 300.00 0.99");
        assertThat(claims.disputed()).extracting(owed -> Amounts.plain(owed.disputed().orElseThrow().amount()))
                .containsExactly("90.00", "200.00");
    }

    @Test
    void claims_withinGrace_nothingOnTop() {
        Standing standing = Standing
                .of(new Account(USD, List.of(invoice("A", 5, "100"), invoice("B", 6, "100")), List.of(),
                        List.of()), DAY);

        assertThat(Claims.of(standing, Optional.of(terms(5, step("0", "40", USD)))).claims())
                .extracting(claim -> claim.late().isPresent()).containsExactly(true, false);
        assertThat(Claims.of(standing, Optional.empty()).onTop().isZero()).isTrue();
    }

    @Test
    void problems_whatCannotBe_eachWithItsPlace() {
        Account account = new Account(USD,
                List.of(invoice("A", 40, "100"), invoice("A", 30, "200"),
                        disputed(invoice("B", 20, "10"), Optional.of(usd("11"))),
                        new Invoiced("D", DAY, DAY.minusDays(1), usd("5"), Optional.empty(), Optional.empty(),
                                Optional.empty(), Place.NOWHERE)),
                List.of(credit("C", 100, "101", "A", back(101, "102")), credit("E", 1, "1", "AA")),
                List.of(paid("A", 30, "60"), paid("A", 20, "41")));

        assertThat(AccountRules.problems(account)).extracting(Problem::message).containsExactly(
                "the number \"A\" stands at  already", "the payments: 101.00, more than 100.00",
                "what is disputed: 11.00, more than 10.00", "due on 2026-08-30, but dated 2026-08-31",
                "what was paid back: 102.00, more than 101.00", "paid back on 2026-05-22, but dated 2026-05-23",
                "credited on 2026-05-23, but dated 2026-06-22", "the credit: 101.00, more than 100.00",
                "there is no invoice on this account \"AA\"");
    }

    @Test
    void problems_paidToTheCent_none() {
        assertThat(AccountRules.problems(new Account(USD, List.of(invoice("A", 40, "100")),
                List.of(credit("C", 9, "100", "A", back(9, "100"))),
                List.of(paid("A", 30, "100"), payment(1, "5")))))
                .isEmpty();
    }

    private static Ageing ageing(List<Integer> bounds, String... daysAndAmounts) {
        List<Invoiced> invoices = new ArrayList<>();
        for (String entry : daysAndAmounts) {
            String[] parts = entry.split(" ", -1);
            invoices.add(invoice("N-" + invoices.size(), Integer.parseInt(parts[0]), parts[1]));
        }
        return Ageing.of(Standing.of(new Account(USD, invoices, List.of(), List.of()), DAY).owed(), bounds, USD);
    }

    private static LateTerms terms(int grace, LateTerms.Fixed... fixed) {
        return new LateTerms(Percent.of("12"), Percent.of("16"), 365, grace, 1, List.of(fixed), Wording.same("terms"));
    }

    private static LateTerms.Fixed step(String from, String amount, CurrencyUnit currency) {
        return new LateTerms.Fixed(Amounts.of(new BigDecimal(from), currency),
                Amounts.of(new BigDecimal(amount), currency));
    }

    /** Dated 30 days before it was due. */
    private static Invoiced invoice(String number, int daysLate, String total) {
        LocalDate due = DAY.minusDays(daysLate);
        return new Invoiced(number, due.minusDays(30), due, usd(total), Optional.empty(), Optional.empty(),
                Optional.empty(), Place.NOWHERE);
    }

    /** Past due for ten days; early until 20 days before the day. */
    private static Invoiced early(String off, String tax) {
        Invoiced plain = invoice("A", 10, "1088.75");
        return new Invoiced(plain.number(), plain.date(), plain.due(), plain.total(), Optional.empty(),
                Optional.empty(),
                Optional.empty(), Optional.of(new Invoiced.Early(DAY.minusDays(20), usd(off), usd(tax))),
                Place.NOWHERE);
    }

    private static Invoiced disputed(Invoiced invoice, Optional<MonetaryAmount> amount) {
        return new Invoiced(invoice.number(), invoice.date(), invoice.due(), invoice.total(), Optional.empty(),
                Optional.empty(), Optional.of(new Invoiced.Dispute("late", amount, Place.NOWHERE)),
                Place.NOWHERE);
    }

    private static Credited credit(String number, int daysAgo, String total, String corrects, PaidBack... paidBack) {
        return new Credited(number, DAY.minusDays(daysAgo), usd(total), Optional.of(corrects), List.of(paidBack),
                Place.NOWHERE);
    }

    private static Payment payment(int daysAgo, String amount) {
        return new Payment(DAY.minusDays(daysAgo), usd(amount), Optional.empty(), List.of(), Place.NOWHERE);
    }

    private static Payment paid(String invoice, int daysAgo, String amount) {
        LocalDate day = DAY.minusDays(daysAgo);
        return new Payment(day, usd(amount), Optional.empty(),
                List.of(new Payment.Share(invoice, day, usd(amount))), Place.NOWHERE);
    }

    private static PaidBack back(int daysAgo, String amount) {
        return new PaidBack(DAY.minusDays(daysAgo), usd(amount), Optional.empty(), Place.NOWHERE);
    }

    private static MonetaryAmount usd(String number) {
        return Amounts.of(new BigDecimal(number), USD);
    }
}
