package icequill.office;

import static icequill.RatesFixture.USD;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.agreement.Installment;
import icequill.answer.RenewalAdvice;
import icequill.answer.WrittenPaper;
import icequill.document.Bill;
import icequill.explain.HowReader;
import icequill.explain.Phrase;
import icequill.files.form.Form;
import icequill.ledger.find.PaperFilter;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.money.Amounts;
import icequill.office.billing.CreditOffice;
import icequill.office.billing.CreditOptions;
import icequill.office.billing.InvoicedPayments;
import icequill.office.billing.IssueOffice;
import icequill.office.billing.IssueOptions;
import icequill.office.register.MergeOffice;
import icequill.office.writing.PaperNumbers;
import icequill.plans.AgreementAtSite;
import icequill.plans.WholeAgreement;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.AgreementLoader;
import icequill.shop.BookForms;
import icequill.shop.BookedPapers;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The agreements of the demo. */
class AgreementTest {

    private static final String BAKERY = "agreements/crumb-lane-bakery.yaml";
    private static final String HOTEL = "agreements/hotel-fernhill.yaml";
    private static final String LANTERN = "agreements/lantern-coffee.yaml";
    private static final LocalDate DAY = LocalDate.of(2026, 5, 20);

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    @BeforeEach
    void shop() {
        folder = temporary.resolve("shop");
        DemoShop.files(folder);
    }

    /** 1,075.00 by the rates of the quote, in four payments of 268.75; tax 8.875 % of each is 23.85. */
    @Test
    void payment_ofTheBakery_isASaleOfItsOwn() {
        WrittenPaper paper = DemoShop.office(folder).plans()
                .installment(FormName.file(folder.resolve(BAKERY)), 2, options(LocalDate.of(2026, 9, 1), "2026-0200"))
                .orElseThrow();

        assertThat(paper.name()).isEqualTo("draft-A-2026-004-2");
        assertThat(paper.sums().orElseThrow().plain()).containsExactly("268.75", "23.85", "292.60");
    }

    /**
     * Worked by hand: 1,680.00 by twelve is 140.00. A machine from 15 August on costs so much more a year by the agreement's own
     * rates, its labor by the timetable of four machines instead of three; 290 of 365 days are left, over nine payments: 375.00 x 290
     * / 365 = 297.95, 33.11 five times and 33.10 four times, where both may handle acid; where the lead alone may, 300.00 x 290 / 365
     * = 238.36, 26.49 four times and 26.48 five times.
     */
    @ParameterizedTest
    @CsvSource({"'qualified: [acid]', 375.00, 297.95, 173.11, 5, 173.10",
            "'qualified: []', 300.00, 238.36, 166.49, 4, 166.48"})
    void changes_machineAddedInMidTerm_pricedWithItsLabor(String helper, String year, String term, String more,
            int times,
            String less) throws IOException {
        Path labor = folder.resolve("pricing/labor.yaml");
        Files.writeString(labor, Files.readString(labor).replace("qualified: []", helper));

        AgreementAtSite hand = hand();

        assertThat(payments(hand)).startsWith("140.00", "140.00", "140.00", more).endsWith(less).hasSize(12);
        assertThat(payments(hand)).filteredOn(more::equals).hasSize(times);
        assertThat(payments(hand)).filteredOn(less::equals).hasSize(9 - times);
        assertThat(Amounts.plain(hand.changes().getFirst().price().amount())).isEqualTo(term);
        assertThat(Amounts.plain(hand.changes().getFirst().yearDifference())).isEqualTo(year);
        assertThat(hand.changes().getFirst().minutes()).hasSize(1)
                .allMatch(minutes -> minutes.key().equals("reason.change-minutes-unproven"));
    }

    /** Both sides by what was given: 240 minutes of lead and helper instead of 180 are 156.00 more a visit, less 5 %, twice. */
    @Test
    void changes_withMinutesOfTheirOwn_pricedByThese() throws IOException {
        Path file = folder.resolve(HOTEL);
        Files.writeString(file,
                Files.readString(file).replace("add: [pool-bar]", "add: [pool-bar]\n    minutes: {full-clean: 240}"));

        AgreementAtSite hand = hand();

        // 225.00 for doses and filters as it was without labor, and 2 x 156.00 x 0.95 = 296.40: 521.40, to 5.00 each side.
        assertThat(Amounts.plain(hand.currentYearPrice().subtract(hand.yearPrice()))).isEqualTo("520.00");
        assertThat(hand.changes().getFirst().minutes().getFirst().toString()).contains("240", "180",
                "minutes-from.estimate");
    }

    /** What the book invoiced stays: eight payments bear 238.36, 29.80 four times and 29.79 four times. */
    @Test
    void changes_recordedAfterAPaymentWasInvoiced_onlyTheOthersBearIt() throws IOException {
        DemoShop.imported(folder);
        Path file = folder.resolve(HOTEL);
        String withChange = Files.readString(file);
        Files.writeString(file, withChange.substring(0, withChange.indexOf("changes:")));
        IssueOffice office = IssueOffice.of(folder,
                Clock.fixed(Instant.parse("2026-12-01T12:00:00Z"), ZoneOffset.UTC));
        for (int payment = 1; payment <= 4; payment++) {
            office.installment(FormName.file(file), payment,
                    new IssueOptions(LocalDate.of(2026, 5 + payment, 1), Optional.empty()))
                    .orElseThrow();
        }
        Files.writeString(file, withChange);

        assertThat(payments(hand())).containsExactly("140.00", "140.00", "140.00", "140.00", "169.80", "169.80",
                "169.80",
                "169.80", "169.79", "169.79", "169.79", "169.79");
    }

    @ParameterizedTest
    @CsvSource({"'add: [pool-bar]', 'add: [pool-bar]\n    minutes: {full-cleen: 240}', changes[0].minutes",
            "'full-clean: 180', 'full-cleen: 180', minutes"})
    void minutes_ofAScopeThatIsNone_aProblem(String from, String to, String path) throws IOException {
        Path file = folder.resolve(HOTEL);
        Files.writeString(file, Files.readString(file).replace(from, to));

        assertThat(
                new AgreementLoader(DemoShop.read(folder),
                        new InvoicedPayments(ShopBook.of(folder, Clock.systemUTC()))::of).of(FormName.file(file), DAY)
                        .problems())
                .singleElement().satisfies(problem -> {
                    assertThat(problem.code()).isEqualTo(Code.UNKNOWN_NAME);
                    assertThat(problem.place().path()).isEqualTo(path);
                    assertThat(problem.text()).contains("no scope \"full-cleen\"", "did you mean \"full-clean\"");
                });
    }

    private AgreementAtSite hand() {
        return new AgreementLoader(DemoShop.read(folder),
                new InvoicedPayments(ShopBook.of(folder, Clock.systemUTC()))::of)
                .of(FormName.file(folder.resolve(HOTEL)), DAY)
                .orElseThrow().first();
    }

    private static List<String> payments(AgreementAtSite hand) {
        return hand.payments().stream().map(Installment::amount).map(Amounts::plain).toList();
    }

    @Test
    void agreement_earnedByVisits_saysSo() throws IOException {
        Path shop = folder.resolve("shop.yaml");
        Files.writeString(shop, Files.readString(shop) + "agreementsEarnedBy: visits\n");

        // 806.25 paid, less 308.04 + 229.46 + 308.04 for the visits of June, September and December.
        assertThat(
                PrintedQuote.of(DemoShop.office(folder).plans()
                        .agreement(FormName.file(folder.resolve(BAKERY)), options(DAY)).orElseThrow()
                        .files().getFirst()).flowing())
                .contains("less what was earned by the visits done",
                        "we would pay back 0.00 before tax", "that is 845.54, so nothing is left");
        assertThat(PrintedQuote.of(DemoShop.office(folder).plans()
                .agreement(FormName.file(folder.resolve("agreements/mercado-del-mar.yaml")),
                        options(DAY))
                .orElseThrow().files().getFirst()).flowing()).contains("nada se pagó por adelantado");
    }

    @Test
    void agreement_demo_saysPriceVisitsResponseExclusionsAndHowToLeaveOnItsFirstPage() throws IOException {
        WrittenPaper paper = DemoShop.office(folder).plans()
                .agreement(FormName.file(folder.resolve(BAKERY)), options(DAY)).orElseThrow();

        String text = PrintedQuote.of(paper.files().getFirst()).flowing();
        assertThat(text.substring(0, text.indexOf("Page 1 of"))).contains("1,075.00 a year, before tax",
                "4 visits in the term, 4 of them full cleanings", "We come within", "8 h",
                "Compressor and sealed refrigeration",
                "tell us by April 1, 2027, 60 days before its last day", "with 30 days of notice");
        assertThat(text).contains("A visit that we miss", "If the business changes hands",
                "we would pay back 175.98 before tax", "unless you refuse by April 1, 2027", "no more than 5% a year");
    }

    /** By N.Y. Gen. Oblig. Law 5-903, 30 to 15 days before 1 April 2027; proposed three days inside the early end. */
    @Test
    void renewal_ofTheBakery_saysOldNewAndWhenToSend() throws IOException {
        RenewalAdvice advice = DemoShop.office(folder).plans()
                .renewal(FormName.file(folder.resolve(BAKERY)), options(LocalDate.of(2027, 3, 5)), Optional.empty())
                .orElseThrow();

        // 1,075.00 + 4 % = 1,118.00, to 5.00: 1,120.00, under the cap of 1,128.75.
        assertThat(PrintedQuote.of(advice.paper().files().getFirst()).flowing()).contains("Until now 1,075.00",
                "From the renewal on 1,120.00", "Difference 45.00", "April 1, 2027", "office@quillwater.example",
                "418 Tanner Row", "N.Y. General Obligations Law 5-903");
        assertThat(advice.data().window()).contains(
                new RenewalAdvice.Window(LocalDate.of(2027, 3, 2), LocalDate.of(2027, 3, 17)));
        assertThat(advice.data().send()).contains(LocalDate.of(2027, 3, 5));
        assertThat(advice.sentences()).contains("What the rules ask of it: the renewal clause, pointed out.",
                "If it is missed, by N.Y. General Obligations Law 5-903: the renewal clause does not bind the customer (read at"
                        + " nysenate.gov).");
        assertThat(advice.sentences()).anyMatch(text -> text.contains("certified mail"))
                .anyMatch(text -> text.contains("check with your adviser"));
    }

    /**
     * By hand: June to September by the quarterly plan is a visit in June, 342.04, and one in September, 254.79: 596.83 less 59.68,
     * to 5.00: 535.00, in four months 133.75 each; 8.875 % of it is 11.87. The next season begins on 1 June 2027, and 1 April is 60
     * days before its eve. Raised by 4 %: 556.40, to 5.00.
     */
    @Test
    void season_ofFourMonths_pricedByItsVisitsAndRenewedForTheNext() throws IOException {
        Path file = changed("months: 12\nbilling: quarterly", "months: 4\nbilling: open-months",
                "renewal:\n  months: 12", "renewal:\n  goesOn: next-season\n  months: 4");
        PlanOffice office = DemoShop.office(folder).plans();

        WrittenPaper last = office.installment(FormName.file(file), 4, options(LocalDate.of(2026, 9, 1), "2026-0200"))
                .orElseThrow();
        assertThat(last.sums().orElseThrow().plain()).containsExactly("133.75", "11.87", "145.62");
        assertThat(PrintedQuote.of(last.files().getFirst()).flowing()).contains("installment 4 of 4",
                "September 1, 2026 to September 30, 2026");
        assertThat(PrintedQuote.of(office.agreement(FormName.file(file), options(DAY)).orElseThrow().files()
                .getFirst()).flowing()).contains("535.00 for the term, before tax",
                        "2 visits in the term, 2 of them full cleanings",
                        "Every month in which the site is open, on its first day",
                        "Before the next season: tell us by April 1, 2027, 60 days before it begins.",
                        "for the next season, 4 months from June 1, 2027 on, unless you refuse by April 1, 2027");
        RenewalAdvice advice = office.renewal(FormName.file(file), options(LocalDate.of(2027, 3, 5)), Optional.empty())
                .orElseThrow();
        assertThat(PrintedQuote.of(advice.paper().files().getFirst()).flowing()).contains(
                "ends on September 30, 2026. It will renew itself on June 1, 2027 for 4 months", "Price of a term",
                "Until now 535.00", "From the renewal on 555.00", "Difference 20.00");
        assertThat(advice.data().window()).contains(
                new RenewalAdvice.Window(LocalDate.of(2027, 3, 2), LocalDate.of(2027, 3, 17)));
    }

    /**
     * By hand: 1,075.00 raised by 4 % is 1,120.00 to the step; by twelve 93.33 with four cents over; 8.875 % of 93.34 is 8.28. New
     * York's rule is for renewals of more than a month. Notice on 10 August ends it on 30 September, the first end of a month 30
     * days later.
     */
    @Test
    void byMonth_afterTheTerm_aMonthAtATimeUntilNotice() throws IOException {
        Path file = changed("renewal:\n  months: 12\n  refuseDays: 60",
                "renewal:\n  goesOn: by-month\n  refuseDays: 30");
        PlanOffice office = DemoShop.office(folder).plans();

        WrittenPaper month = office
                .installment(FormName.file(file), 1001, options(LocalDate.of(2027, 6, 1), "2027-0001"))
                .orElseThrow();
        assertThat(month.sums().orElseThrow().plain()).containsExactly("93.34", "8.28", "101.62");
        assertThat(PrintedQuote.of(month.files().getFirst()).flowing()).contains(
                "the month of June 1, 2027 to", "after its term Share of 1,120.00", "A month after the term");
        RenewalAdvice advice = office.renewal(FormName.file(file), options(LocalDate.of(2027, 4, 20)), Optional.empty())
                .orElseThrow();
        assertThat(PrintedQuote.of(advice.paper().files().getFirst()).flowing()).contains(
                "From June 1, 2027 on it goes on by the month, until you or we end it with 30 days of notice",
                "Until now 1,075.00", "From the renewal on 1,120.00", "4 × 93.34 + 8 × 93.33", "May 1, 2027",
                "We end agreement A-2026-004").doesNotContain("will renew itself");
        assertThat(advice.data().window()).isEmpty();
        assertThat(advice.sentences()).anyMatch(text -> text.contains("check with your adviser"));
        assertThat(PrintedQuote.of(office.agreement(FormName.file(file), options(DAY)).orElseThrow().files()
                .getFirst()).flowing()).contains("From June 1, 2027 on it goes on by the month",
                        "with as many days of notice to the end of any month");

        Files.writeString(file,
                Files.readString(file).replace("refuseDays: 30", "refuseDays: 30\n  noticed: 2027-08-10"));
        assertThat(office.installment(FormName.file(file), 1004, options(LocalDate.of(2027, 12, 1))).orElseThrow()
                .sums().orElseThrow().plain()).startsWith("93.34");
        assertThat(office.installment(FormName.file(file), 1005, options(LocalDate.of(2027, 12, 1))).problems())
                .extracting(Problem::text).containsExactly("the agreement has no installment 1005"
                        + " (--installment from 1 to 4, or from 1001 to 1004 after its term)");
    }

    /** Notice on 1 April 2027 leaves its 30 days before 31 May, the last of the term; on 2 May it goes on for the month of June. */
    @Test
    void byMonth_noticeWithinTheTerm_endsWithItAndNoNoticeSaysThatItGoesOn() throws IOException {
        Path file = changed("renewal:\n  months: 12\n  refuseDays: 60",
                "renewal:\n  goesOn: by-month\n  noticed: 2027-04-01\n  refuseDays: 30");
        PlanOffice office = DemoShop.office(folder).plans();

        assertThat(office.renewal(FormName.file(file), options(LocalDate.of(2027, 4, 20)), Optional.empty()).problems())
                .extracting(Problem::message)
                .containsExactly("notice was given on 2027-04-01: it ends on 2027-05-31 and does not go on");
        Files.writeString(file, Files.readString(file).replace("noticed: 2027-04-01", "noticed: 2027-05-02"));
        assertThat(office.renewal(FormName.file(file), options(LocalDate.of(2027, 4, 20)), Optional.empty()).problems())
                .isEmpty();
    }

    /** The sixth year after a term of five: 1,120.00 by twelve, as in the first. */
    @Test
    void byMonth_tenYearsAndMore_areBilledAsTheFirst() throws IOException {
        Path file = changed("renewal:\n  months: 12\n  refuseDays: 60",
                "renewal:\n  goesOn: by-month\n  refuseDays: 30", "months: 12\nbilling", "months: 60\nbilling");

        assertThat(DemoShop.office(folder).plans().installment(FormName.file(file), 1061,
                options(LocalDate.of(2036, 6, 1))).orElseThrow().sums().orElseThrow().plain()).startsWith("93.34");
    }

    @ParameterizedTest
    @CsvSource({"12, A year", "5, The term"})
    void severalSites_columnOfPrices_saysWhatTheyAreFor(int months, String column) throws IOException {
        Path file = folder.resolve(LANTERN);
        Files.writeString(file, Files.readString(file).replaceFirst("(?s)changes:.*", "").replace("months: 12",
                "months: " + months).replace("goesOn: by-month", "months: " + months));

        assertThat(PrintedQuote.of(DemoShop.office(folder).plans()
                .agreement(FormName.file(file), options(DAY)).orElseThrow().files().getFirst()).flowing())
                .contains(column + ", before tax");
    }

    /**
     * By hand: 1,035.00 and 620.00 a year, a quarter of each 258.75 and 155.00. The third site comes on 1 October, 243 of 365 days:
     * 620.00 x 243 / 365 = 412.77, over two payments 206.39 and 206.38. On 1 March the first one loses a machine: (620.00 - 1,035.00) x 92
     * / 365 = -104.60, all in the last payment. Payments are not taxed in Ceniza; in Alder 8.875 % of 413.75 is 36.72.
     */
    @Test
    void severalSites_paidTogetherEachByItsPlace_comingAndGoingByTheDay() throws IOException {
        WholeAgreement whole = whole();

        assertThat(whole.sites()).extracting(state -> Amounts.plain(state.plannedYearPrice()))
                .containsExactly("1035.00", "620.00", "620.00");
        assertThat(Amounts.plain(whole.yearPrice())).isEqualTo("1655.00");
        assertThat(whole.termPayments()).extracting(payment -> Amounts.plain(payment.amount()))
                .containsExactly("413.75", "413.75", "620.14", "515.53");
        assertThat(whole.termPayments()).allSatisfy(payment -> assertThat(HowReader.evaluate(payment.how().text(USD)))
                .isEqualByComparingTo(Amounts.number(payment.amount())));
        assertThat(whole.sites().getLast().calendar().visits()).extracting(visit -> visit.date().toString())
                .containsExactly("2026-12-01");
        WrittenPaper third = DemoShop.office(folder).plans().installment(FormName.file(folder.resolve(LANTERN)), 3,
                options(LocalDate.of(2026, 12, 1), "2026-0300")).orElseThrow();
        assertThat(third.sums().orElseThrow().plain()).containsExactly("620.14", "36.72", "656.86");
        assertThat(PrintedQuote.of(third.files().getFirst()).flowing()).contains("By site",
                "Lantern Coffee Main Street, 0301: agreement A-2026-007", "258.75", "155.00", "206.39",
                "3 sites, named below", "LCR-2026-14");
        assertThat(PrintedQuote.of(DemoShop.office(folder).plans()
                .agreement(FormName.file(folder.resolve(LANTERN)), options(DAY)).orElseThrow().files().getFirst())
                .flowing()).contains("Sites, and the price of each", "1,655.00 a year, before tax",
                        "1,035.00 + 620.00 + 0.00; all sites together", "5 visits in the term",
                        "from October 1, 2026", "Full clean: December 1, 2026");
        assertThat(PrintedQuote.of(DemoShop.office(folder).plans()
                .renewal(FormName.file(folder.resolve(LANTERN)), options(LocalDate.of(2027, 4, 20)), Optional.empty())
                .orElseThrow().paper().files().getFirst()).flowing()).contains("Until now 1,860.00",
                        "From the renewal on 1,890.00", "12 × 157.50", "630.00 + 630.00 + 630.00");
    }

    /**
     * Two sites at 400.00, by quarters. By 31 December both visits of the first are done, and none of the second, which is open from
     * February to May: of 600.00 paid 400.00 is earned.
     */
    @Test
    void severalSites_refund_paidLessEarnedOfAllTogether() throws IOException {
        Path shop = folder.resolve("shop.yaml");
        Files.writeString(shop, Files.readString(shop) + "agreementsEarnedBy: visits\n");
        Path depot = folder.resolve("sites/lantern-depot.yaml");
        Files.writeString(depot, Files.readString(depot) + "season: [february, march, april, may]\n");
        Path file = folder.resolve(LANTERN);
        Files.writeString(file, Files.readString(file).replaceFirst("(?s)changes:.*", "").replaceFirst(
                "(?s)sites:.*(?=tier:)", """
                        sites:
                          - {site: lantern-main-street, agreed: {price: 400.00, from: an offer}}
                          - {site: lantern-depot, agreed: {price: 400.00, from: an offer}}
                        """));

        assertThat(PrintedQuote.of(DemoShop.office(folder).plans()
                .agreement(FormName.file(file), options(DAY)).orElseThrow().files().getFirst()).flowing())
                .contains("were December 31, 2026 its last day", "we would pay back 200.00 before tax");
    }

    /** Three machines at two sites get 10 % in place of 5 %; four from October on 12 %, which the two others have from then on too. */
    @Test
    void severalSites_discountByWhatIsLookedAfterInAll_alsoWhenASiteComes() throws IOException {
        semiannualWith("machineDiscount: [{from: 3, percent: 10}, {from: 4, percent: 12}]");
        Path file = folder.resolve(LANTERN);
        Files.writeString(file, Files.readString(file).replaceFirst("(?s)changes:.*", ""));

        WholeAgreement whole = whole();

        // 1,087.58 less 108.76 = 978.82 -> 980.00, less 130.51 = 957.07 -> 955.00; 654.50 less 65.45 = 589.05 -> 590.00, less 78.54 =
        // 575.96 -> 575.00. From October on, 243 of 365 days: -25.00 and -15.00 a year are -16.64 and -9.99; the third costs 575.00.
        assertThat(whole.sites()).extracting(state -> Amounts.plain(state.yearPrice()) + " "
                + Amounts.plain(state.currentYearPrice())).containsExactly("980.00 955.00", "590.00 575.00",
                        "0.00 575.00");
        assertThat(whole.sites().getFirst().changes()).singleElement()
                .satisfies(change -> assertThat(Amounts.plain(change.price().amount())).isEqualTo("-16.64"));
        assertThat(whole.sites().get(1).changes()).singleElement()
                .satisfies(change -> assertThat(Amounts.plain(change.price().amount())).isEqualTo("-9.99"));
        assertThat(whole.sites().getFirst().how().reasons()).extracting(Phrase::key)
                .contains("reason.discount-machines", "reason.best-discount");
    }

    /** Two sites come in October: three sites get 12 %, 654.50 less 78.54 = 575.96 -> 575.00; 620.00 would be for less than three. */
    @Test
    void severalSites_twoComeOnOneDay_plannedAtThePriceTheyAreChargedBy() throws IOException {
        semiannualWith("siteDiscount: [{from: 3, percent: 12}]");
        Path file = folder.resolve(LANTERN);
        Files.writeString(file, Files.readString(file).replaceFirst("(?s)changes:.*", "").replace(
                "- site: lantern-depot\n", "- site: lantern-depot\n    from: 2026-10-01\n"));

        WholeAgreement whole = whole();

        assertThat(whole.sites()).extracting(state -> Amounts.plain(state.plannedYearPrice()))
                .containsExactly("1035.00", "575.00", "575.00");
        assertThat(whole.sites()).extracting(state -> HowReader.evaluate(state.how().text(USD)))
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(new BigDecimal("1035"), new BigDecimal("575"), new BigDecimal("575"));
        // 243 of 365 days: 382.81.
        assertThat(Amounts.plain(whole.sites().getLast().changes().getFirst().price().amount())).isEqualTo("382.81");
    }

    /** All four payments stand; what the machine costs less, 104.60, goes back of the last one, which asked 258.75 for its site. */
    @Test
    void severalSites_changeAfterAllWasInvoiced_givenBackOfTheLastPayment() throws IOException {
        Path file = folder.resolve(LANTERN);
        String withChange = Files.readString(file);
        Files.writeString(file, withChange.replaceFirst("(?s)changes:.*", ""));
        DemoShop.imported(folder);
        IssueOffice office = IssueOffice.of(folder, Clock.fixed(Instant.parse("2027-03-20T12:00:00Z"), ZoneOffset.UTC));
        for (int payment = 1; payment <= 4; payment++) {
            office.installment(FormName.file(file), payment,
                    new IssueOptions(LocalDate.of(2026, 3 + 3 * payment > 12 ? 12 : 3 + 3 * payment, 1)
                            .plusMonths(payment == 4 ? 3 : 0), Optional.empty()))
                    .orElseThrow();
        }
        Files.writeString(file, withChange);

        WholeAgreement whole = whole();

        assertThat(Amounts.plain(whole.givenBack(4))).isEqualTo("104.60");
        assertThat(whole.termPayments()).extracting(payment -> Amounts.plain(payment.amount()))
                .containsExactly("413.75", "413.75", "620.14", "620.13");
        assertThat(new BookForms(ShopBook.of(folder, Clock.systemUTC())).shop().agreementsAt("lantern-depot"))
                .extracting(Form::id).containsExactly("lantern-coffee");
    }

    /**
     * Two payments of 258.75 were billed while the agreement was over one site. With the second from 1 October, 243 of 365 days, 1,035.00
     * is 980.00: 55.00 x 243 / 365 = 36.62, half of it less in each payment left; the second site costs 590.00 x 243 / 365 = 392.79.
     */
    @Test
    void severalSites_billedAsOneBefore_keepsWhatTheFirstPaid() throws IOException {
        semiannualWith("siteDiscount: [{from: 2, percent: 10}]");
        Path file = folder.resolve(LANTERN);
        String rest = withoutSites(file);
        IssueOffice office = IssueOffice.of(folder, Clock.fixed(Instant.parse("2026-12-02T12:00:00Z"), ZoneOffset.UTC));
        billedAlone(office, file, List.of(LocalDate.of(2026, 6, 1), LocalDate.of(2026, 9, 1)));
        Files.writeString(file,
                rest + "sites:\n  - site: lantern-main-street\n  - site: lantern-depot\n    from: 2026-10-01\n");

        WholeAgreement whole = whole();

        assertThat(payments(whole.first())).containsExactly("258.75", "258.75", "240.44", "240.44");
        assertThat(payments(whole.sites().getLast())).containsExactly("0.00", "0.00", "196.40", "196.39");
        assertThat(office.installment(FormName.file(file), 3,
                new IssueOptions(LocalDate.of(2026, 12, 1), Optional.empty())).problems()).isEmpty();
    }

    private void semiannualWith(String line) throws IOException {
        Path tiers = folder.resolve("pricing/tiers.yaml");
        Files.writeString(tiers,
                Files.readString(tiers).replaceFirst("    discount: 5 ", "    " + line + "\n    discount: 5 "));
    }

    private static String withoutSites(Path file) throws IOException {
        return Files.readString(file).replaceFirst("(?s)changes:.*", "").replaceFirst("(?s)sites:.*(?=tier:)", "");
    }

    /** Its first payments, while the agreement is over one site. */
    private void billedAlone(IssueOffice office, Path file, List<LocalDate> days) throws IOException {
        Files.writeString(file, withoutSites(file) + "site: lantern-main-street\n");
        DemoShop.imported(folder);
        for (int i = 0; i < days.size(); i++) {
            office.installment(FormName.file(file), i + 1, new IssueOptions(days.get(i), Optional.empty()))
                    .orElseThrow();
        }
    }

    /** What two sites that come in late add after the last payment was billed is one payment, on the later of their days. */
    @Test
    void severalSites_addedAfterAllWasInvoiced_areAskedForOnTheLaterDay() throws IOException {
        Path file = folder.resolve(LANTERN);
        String rest = withoutSites(file);
        IssueOffice office = IssueOffice.of(folder, Clock.fixed(Instant.parse("2027-03-20T12:00:00Z"), ZoneOffset.UTC));
        billedAlone(office, file, Collections.nCopies(4, LocalDate.of(2027, 3, 1)));
        Files.writeString(file, rest + "sites:\n  - site: lantern-main-street\n"
                + "  - site: lantern-depot\n    from: 2027-03-10\n  - site: lantern-ceniza\n    from: 2027-04-20\n");

        WholeAgreement whole = whole();

        assertThat(whole.sites()).extracting(state -> state.termPayments().getLast().due()).containsExactly(
                LocalDate.of(2027, 3, 1), LocalDate.of(2027, 3, 10), LocalDate.of(2027, 4, 20));
        assertThat(whole.termPayments().getLast().number()).isEqualTo(5);
        assertThat(whole.termPayments().getLast().due()).isEqualTo("2027-04-20");
    }

    @Test
    void severalSites_installment_isFoundByTheNumberOfEachStore() throws IOException {
        DemoShop.imported(folder);
        Clock clock = Clock.fixed(Instant.parse("2026-06-03T12:00:00Z"), ZoneOffset.UTC);
        String number = IssueOffice.of(folder, clock).installment(FormName.file(folder.resolve(LANTERN)), 1,
                new IssueOptions(LocalDate.of(2026, 6, 1), Optional.empty())).orElseThrow().number();

        for (String store : List.of("0301", "0302", "Depot Square")) {
            assertThat(ShopBook.of(folder, clock)
                    .read(open -> Validated.valid(open.papers().find(store, PaperFilter.NONE, 10))).orElseThrow())
                    .extracting(IssuedPaper::number).containsExactly(number);
        }
    }

    /** 2 % of 413.75 before tax, 8.275, for ten days. */
    @Test
    void installment_paidEarly_isLessByTheShopsTerms() throws IOException {
        Path adjustments = folder.resolve("pricing/adjustments.yaml");
        Files.writeString(adjustments,
                Files.readString(adjustments) + "\nearlyPayment: {percent: 2, days: 10, on: net}\n");
        DemoShop.imported(folder);
        Clock clock = Clock.fixed(Instant.parse("2026-06-03T12:00:00Z"), ZoneOffset.UTC);
        String number = IssueOffice.of(folder, clock).installment(FormName.file(folder.resolve(LANTERN)), 1,
                new IssueOptions(LocalDate.of(2026, 6, 1), Optional.empty())).orElseThrow().number();

        Bill bill = ShopBook.of(folder, clock).read(open -> PaperNumbers.find(open, number,
                EnumSet.of(PaperKind.INVOICE)).then(issued -> BookedPapers.paper(open, issued)))
                .map(paper -> (Bill) paper).orElseThrow();

        assertThat(bill.totals().early().orElseThrow().until()).isEqualTo("2026-06-11");
        assertThat(Amounts.plain(bill.totals().early().orElseThrow().off())).isEqualTo("8.28");
        assertThat(bill.totals().early().orElseThrow().gross().add(bill.totals().early().orElseThrow().off()))
                .isEqualTo(bill.totals().gross());
    }

    /** Billed anew under another purchase order it is for several sites as before: no one of them is where it was delivered. */
    @Test
    void severalSites_reissued_isStillForSeveral() throws IOException {
        DemoShop.imported(folder);
        Clock clock = Clock.fixed(Instant.parse("2026-06-03T12:00:00Z"), ZoneOffset.UTC);
        String number = IssueOffice.of(folder, clock).installment(FormName.file(folder.resolve(LANTERN)), 1,
                new IssueOptions(LocalDate.of(2026, 6, 1), Optional.empty())).orElseThrow().number();
        CreditOptions wish = new CreditOptions(List.of(), "Another order.", LocalDate.of(2026, 6, 2), Optional.of(
                new CreditOptions.Reissue(Optional.of("LCR-2026-15"), Optional.empty(), CreditOptions.Due.KEEP)));

        String anew = CreditOffice.of(folder, clock).credit(number, wish).orElseThrow().getLast().number();

        Bill bill = ShopBook.of(folder, clock).read(open -> PaperNumbers.find(open, anew,
                EnumSet.of(PaperKind.INVOICE)).then(issued -> BookedPapers.paper(open, issued)))
                .map(paper -> (Bill) paper).orElseThrow();
        assertThat(bill.served().purchaseOrder()).contains("LCR-2026-15");
        assertThat(bill.served().isAtOneSite()).isFalse();
    }

    /** What is asked of the store goes on under its new id; two stores of one agreement are not made one. */
    @Test
    void severalSites_mergedSite_staysPartOfTheAgreement() throws IOException {
        Path other = folder.resolve("sites/lantern-old-depot.yaml");
        Files.writeString(other, Files.readString(folder.resolve("sites/lantern-depot.yaml"))
                .replace("id: counter", "id: old-counter"));
        Path file = folder.resolve(LANTERN);
        Files.writeString(file, Files.readString(file).replace("site: lantern-depot", "site: lantern-old-depot"));
        DemoShop.imported(folder);
        ShopBook book = ShopBook.of(folder, Clock.systemUTC());
        MergeOffice merging = MergeOffice.of(folder, Clock.systemUTC());
        IssueOffice.of(folder, Clock.fixed(Instant.parse("2026-06-02T12:00:00Z"), ZoneOffset.UTC)).installment(
                FormName.file(file), 1, new IssueOptions(LocalDate.of(2026, 6, 1), Optional.empty())).orElseThrow();

        assertThat(merging.sites("lantern-main-street", "lantern-old-depot", true).problems())
                .extracting(Problem::message).contains("agreement \"lantern-coffee\" is over both sites");
        merging.sites("lantern-old-depot", "lantern-depot", false).orElseThrow();

        assertThat(new BookForms(book).shop().agreementsAt("lantern-depot")).extracting(Form::id)
                .containsExactly("lantern-coffee");
        // What was invoiced under the old id, 155.00 of 413.75, stays what the store paid.
        assertThat(new AgreementLoader(new BookForms(book).shop(), new InvoicedPayments(book)::of)
                .of(new FormName.InBook("lantern-coffee"), DAY).orElseThrow().sites())
                .extracting(state -> state.setting().whole().id() + " "
                        + state.invoiced().nets().values().stream().map(Amounts::plain).toList())
                .containsExactly("lantern-main-street [258.75]", "lantern-depot [155.00]", "lantern-ceniza [0.00]");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "billing: quarterly | billing: per-visit | NOT_ALLOWED | several sites have no payments together",
            "site: lantern-depot | site: lantern-main-street | DUPLICATE_NAME | \"lantern-main-street\" is named a second time",
            "site: lantern-depot | site: hotel-fernhill | NOT_ALLOWED | have other customers, or another kind of tax",
            "site: lantern-depot | site: lantern-depott | UNKNOWN_NAME | did you mean \"lantern-depot\"",
            "from: 2026-10-01 | from: 2027-10-01 | OUT_OF_RANGE | is not within the term after its first day",
            "from: 2026-10-01 | from: 2026-10-01\\n    until: 2026-09-01 | WRONG_ORDER | before it comes in",
            "site: lantern-main-street\\n    remove | site: lantern-mian\\n    remove | UNKNOWN_NAME | there is no site of this agreement",
            "site: lantern-main-street\\n    remove | remove | MISSING | does not say at which site",
            "tier: semiannual | tier: semiannual\\nsite: lantern-depot | NOT_ALLOWED | site of the whole, but there are sites",
            "sites: | sitez: | UNKNOWN_KEY | there is no key \"sitez\" here",
            "sites: | sitez: | MISSING | nothing says for which site it is"})
    void severalSites_wrong_sayWhat(String from, String to, Code code, String message) throws IOException {
        Path file = folder.resolve(LANTERN);
        String text = Files.readString(file);
        assertThat(text).contains(from.replace("\\n", "\n"));
        Files.writeString(file, text.replace(from.replace("\\n", "\n"), to.replace("\\n", "\n")));

        List<Problem> problems = DemoShop.office(folder).plans().agreement(FormName.file(file), options(DAY))
                .problems();

        assertThat(problems).extracting(Problem::code).contains(code);
        assertThat(problems.stream().map(Problem::text)).anyMatch(found -> found.contains(message));
    }

    private WholeAgreement whole() {
        return new AgreementLoader(DemoShop.read(folder),
                new InvoicedPayments(ShopBook.of(folder, Clock.systemUTC()))::of)
                .of(FormName.file(folder.resolve(LANTERN)), DAY).orElseThrow();
    }

    /** The bakery's agreement, each text replaced by the next. */
    private Path changed(String... texts) throws IOException {
        Path file = folder.resolve(BAKERY);
        String agreement = Files.readString(file);
        for (int i = 0; i < texts.length; i += 2) {
            assertThat(agreement).contains(texts[i]);
            agreement = agreement.replace(texts[i], texts[i + 1]);
        }
        Files.writeString(file, agreement);
        return file;
    }

    /** New York's 30 to 15 days and Utah's 90 to 30 have one day in common. */
    @Test
    void renewal_ofTheHotel_twoLawsLeaveOneDay() {
        RenewalAdvice advice = DemoShop.office(folder).plans()
                .renewal(FormName.file(folder.resolve(HOTEL)), options(LocalDate.of(2027, 1, 31)), Optional.empty())
                .orElseThrow();

        assertThat(advice.data().window()).contains(
                new RenewalAdvice.Window(LocalDate.of(2027, 1, 31), LocalDate.of(2027, 1, 31)));
        assertThat(advice.sentences()).anyMatch(text -> text.contains("There is no working day from January 31, 2027"));
        assertThat(advice.data().send()).isEmpty();
    }

    /** The flaker's two visits at today's rates cost what they did: 754.32 less 37.72 = 716.60, to 5.00. */
    @Test
    void renewal_repriced_atTheRatesOfItsFirstDay() throws IOException {
        RenewalAdvice advice = DemoShop.office(folder).plans()
                .renewal(FormName.file(folder.resolve("agreements/mercado-del-mar.yaml")),
                        options(LocalDate.of(2027, 4, 20)),
                        Optional.empty())
                .orElseThrow();

        assertThat(PrintedQuote.of(advice.paper().files().getFirst()).flowing()).contains("Desde la renovación 715.00",
                "Diferencia 0.00");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "tier: semiannual | tier: semianual | UNKNOWN_NAME | did you mean \"semiannual\"",
            "add: [pool-bar] | add: [pool] | UNKNOWN_NAME | there is no machine \"pool\"",
            "add: [pool-bar] | add: [floor-3] | NOT_ALLOWED | floor-3 is looked after already",
            "add: [pool-bar] | remove: [pool-bar] | NOT_ALLOWED | pool-bar is not looked after",
            "add: [pool-bar] | remove: [lobby-bar, floor-3, floor-6] | NOT_ALLOWED | no machine is left",
            "from: 2026-08-15 | from: 2027-08-15 | OUT_OF_RANGE | is not within the term after its first day",
            "from: 2026-08-15 | from: 2026-06-01 | OUT_OF_RANGE | is not within the term after its first day",
            "refuseDays: 90 | refuseDays: 900 | OUT_OF_RANGE | 900",
            "price: 1680.00 | price: 1680.005 | OUT_OF_RANGE | finer than USD is paid",
            "refuseDays: 90 | refusedays: 90 | UNKNOWN_KEY | did you mean \"refuseDays\"",
            "before: 312.4 | before: 0 | NOT_ALLOWED | above 0",
            "months: 24 | months: 18 | NOT_ALLOWED | 18",
            "months: 24 | goesOn: by-month\\n  months: 24 | NOT_ALLOWED | goes on by the month, but for 24 months",
            "months: 24 | months: 5 | NOT_ALLOWED | goes on for 5 months at the price of a term of 12 months (months: 12 or more)",
            "months: 24 | goesOn: next-season | MISSING | nothing says for how long it goes on",
            "months: 24 | months: 24\\n  noticed: 2027-01-01 | NOT_ALLOWED | goesOn: by-month",
            "months: 24 | goesOn: by-month\\n  noticed: 2026-01-01 | WRONG_ORDER | before the term begins on 2026-06-01",
            "months: 24 | goesOn: monthly | NOT_ALLOWED | allowed: by-month, by-term, next-season",

            "months: 12 | months: 0 | NOT_ALLOWED | 0",
            "jurisdictions: [US-NY, US-UT] | jurisdictions: [] | MISSING | jurisdictions",
            "index: | percent: 3\\n    index: | NOT_ALLOWED | the price is raised in 2 ways",
            "months: 12 | months: 5 | NOT_ALLOWED | goes on for 24 months at the price of a term of 5 months (months: 5)",
            "US-UT | Utah | NOT_ALLOWED | a place by ISO 3166"})
    void agreements_wrong_sayWhat(String from, String to, Code code, String message) throws IOException {
        Path file = folder.resolve(HOTEL);
        Files.writeString(file, Files.readString(file).replace(from, to.replace("\\n", "\n")));

        List<Problem> problems = DemoShop.office(folder).plans().agreement(FormName.file(file), options(DAY))
                .problems();

        assertThat(problems).extracting(Problem::code).contains(code);
        assertThat(problems.stream().map(Problem::text)).anyMatch(text -> text.contains(message));
        assertThat(folder.resolve("papers")).doesNotExist();
    }

    @Test
    void payment_thatThereIsNot_saysWhich() {
        assertThat(DemoShop.office(folder).plans().installment(FormName.file(folder.resolve(BAKERY)), 5, options(DAY))
                .problems())
                .extracting(Problem::text)
                .containsExactly("the agreement has no installment 5 (--installment from 1 to 4)");
    }

    /** A day after the window: refused; with the reason it is printed, dated, and claims no renewal. */
    @Test
    void renewal_late_makesNoClaim() throws IOException {
        PlanOffice office = DemoShop.office(folder).plans();
        PaperOptions late = options(LocalDate.of(2027, 4, 2));

        assertThat(office.renewal(FormName.file(folder.resolve(BAKERY)), late, Optional.empty()).problems())
                .extracting(Problem::text)
                .singleElement().asString()
                .contains("dated 2027-04-02, after 2027-04-01, the last day to refuse", "--late");
        String text = PrintedQuote
                .of(office.renewal(FormName.file(folder.resolve(BAKERY)), late, Optional.of("our letter came back"))
                        .orElseThrow().paper().files().getFirst())
                .flowing();

        assertThat(text)
                .contains("April 2, 2027", "our letter came back", "does not say that the agreement renews itself",
                        "If it goes on 1,120.00")
                .doesNotContain("It will renew itself", "you need do nothing", "Last day to refuse",
                        "From the renewal on");
        RenewalAdvice advice = office
                .renewal(FormName.file(folder.resolve(BAKERY)), late, Optional.of("our letter came back"))
                .orElseThrow();
        assertThat(advice.sentences())
                .contains("The days for it were March 2, 2027 to March 17, 2027. They are over.")
                .noneMatch(sentence -> sentence.contains("Send it on"));
        assertThat(advice.data().send()).isEmpty();
        assertThat(advice.data().window().map(RenewalAdvice.Window::last)).contains(LocalDate.of(2027, 3, 17));
        assertThat(office.renewal(FormName.file(folder.resolve(BAKERY)), late, Optional.of(" ")).problems())
                .extracting(Problem::message)
                .containsExactly("--late without a reason");
        assertThat(
                office.renewal(FormName.file(folder.resolve(BAKERY)), options(LocalDate.of(2027, 3, 5)),
                        Optional.of("why"))
                        .problems())
                .extracting(Problem::message).containsExactly("--late, but 2027-03-05 is in time");
    }

    @Test
    void renewal_withoutARaise_saysWhatToAdd() throws IOException {
        Path file = folder.resolve(BAKERY);
        Files.writeString(file, Files.readString(file).replace("  raise: {percent: 4}\n", ""));

        assertThat(
                DemoShop.office(folder).plans()
                        .renewal(FormName.file(file), options(LocalDate.of(2027, 3, 5)), Optional.empty()).problems())
                .extracting(Problem::message)
                .containsExactly("nothing says how the price of the renewal comes about");
    }

    private static PaperOptions options(LocalDate date) {
        return new PaperOptions(Optional.empty(), date, Optional.empty(), Extras.NONE);
    }

    private static PaperOptions options(LocalDate date, String number) {
        return new PaperOptions(Optional.of(number), date, Optional.empty(), Extras.NONE);
    }
}
