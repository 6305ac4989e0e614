package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** Agreements through their lives. That of the bakery: a year from 1 June 2026 for 1,075.00 in four payments, 30 days of notice. */
@Tag("wide")
class AgreementLifeTest {

    private static final String BAKERY = "A-2026-004";
    private static final String MARKET = "A-2026-005";

    private static final Clock MARCH = on("2027-03-12");
    private static final Clock APRIL = on("2027-04-05");
    private static final Clock JUNE = on("2027-06-02");

    @TempDir
    private Path folder;

    private static Clock on(String day) {
        return Clock.fixed(Instant.parse(day + "T17:00:00Z"), ZoneOffset.UTC);
    }

    /**
     * By hand: 1,075.00 over 365 days, of which 1 June to 31 December has 214, so 151 x 1,075.00 / 365 = 444.73 go back of what was billed:
     * all 268.75 of the fourth payment, with 23.85 of tax, and 175.98 of the third, with 15.62.
     */
    @ParameterizedTest
    @EnumSource
    void endByDays_givesBackWhatIsNotEarned_inTheSameStep(Database database) throws IOException {
        BookShop shop = billed(database, 4);

        JsonNode would = shop.run(line("--json")).json();
        assertThat(would.path("tried").asBoolean()).isTrue();
        assertThat(would.path("lastDay").asString()).isEqualTo("2026-12-31");
        assertThat(would.path("back").path("amount").asString()).isEqualTo("444.73");
        assertThat(stage(shop)).isEqualTo("in-force");
        assertThat(shop.json("credit", "list").path("papers")).isEmpty();

        JsonNode ended = shop.json(line("--from", "J. Baker", "--words", "We close.", "--yes"));
        assertThat(ended.path("credits")).extracting(paper -> paper.path("gross").asString())
                .containsExactly("-191.60", "-292.60");
        assertThat(stage(shop)).isEqualTo("notice-given");
        assertThat(shop.run("agreement", "show", BAKERY).out()).contains("Its last day is December 31, 2026.",
                "The customer gave notice (mail, J. Baker); its last day is December 31, 2026.: We close.");
        assertThat(shop.problems(line("--yes"))).containsExactly(
                ":0: : notice was given on 2026-12-01 already: the agreement ends on 2026-12-31 ()");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** By hand: the last of its four visits, at list 254.79 of 1,193.66, is not done: 1,075.00 x 254.79 / 1,193.66 = 229.46. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void endByVisits_givesBackThoseThatWereNotDone(Database database) throws IOException {
        BookShop shop = billed(database, 4);
        Path settings = shop.folder().resolve("shop.yaml");
        Files.writeString(settings, Files.readString(settings) + "\nagreementsEarnedBy: visits\n");
        for (String day : List.of("2026-06-02", "2026-08-30", "2026-12-03")) {
            shop.json("visit", "add", shop.write("visits/done-" + day + ".yaml", """
                    format: 1
                    form: visit
                    site: crumb-lane-bakery
                    people:
                      - {name: Lead technician, grade: lead, arrived: %1$sT09:00, left: %1$sT10:30, on: cleaning}
                    """.formatted(day)).toString());
        }

        JsonNode ended = shop.json(line("--yes"));

        assertThat(ended.path("back").path("amount").asString()).isEqualTo("229.46");
        assertThat(ended.path("back").path("earning").asString()).isEqualTo("visits");
        assertThat(ended.path("credits")).hasSize(1);
        assertThat(shop.json("agreement", "show", BAKERY).path("visits"))
                .extracting(visit -> visit.path("day").asString() + " " + visit.path("done").asString(""))
                .containsExactly("2026-06-01 done-2026-06-02", "2026-09-01 done-2026-08-30",
                        "2026-12-01 done-2026-12-03");
    }

    /**
     * By hand, with only the first payment billed: by the end those of June, September and December come to 806.25, of which 630.27 is earned.
     * The 175.98 that go back are taken off the one of December, which then asks for 92.77; that of March is never asked for.
     */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void installmentsAfterTheEnd_areNeverBilled_andTheLastOneAsksForLess(Database database) throws IOException {
        BookShop shop = billed(database, 1);

        JsonNode ended = shop.json(line("--yes"));

        assertThat(ended.path("credits")).isEmpty();
        assertThat(ended.path("unbilled").toString()).isEqualTo("[2,3]");
        assertThat(ended.path("dropped").toString()).isEqualTo("[4]");
        assertThat(due(shop)).containsExactly("2 268.75", "3 92.77");
        shop.json("invoice", "issue", BAKERY, "--installment", "2", "--date", "2026-12-30");
        shop.json("invoice", "issue", BAKERY, "--installment", "3", "--date", "2026-12-30");
        assertThat(due(shop)).isEmpty();
        assertThat(shop.problems("invoice", "issue", BAKERY, "--installment", "4", "--date", "2026-12-30"))
                .singleElement().asString().contains("nothing of installment 4 is left to be billed");
        assertThat(shop.json("agreement", "next", BAKERY).path("installment").isMissingNode()).isTrue();
    }

    /** No call is promised anything, and no visit gets its discount, after the last day. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void endedAgreement_isInForceNowhere(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        assertThat(renewals(shop)).contains(BAKERY);

        shop.json("agreement", "end", BAKERY, "--way", "mail", "--on", "2026-11-29", "--yes");

        assertThat(stage(shop)).isEqualTo("ended-by-notice");
        assertThat(renewals(shop)).doesNotContain(BAKERY);
        JsonNode taken = shop.json("call", "take", "crumb-lane-bakery", "--by", "J. Baker", "--symptom", "No ice.");
        assertThat(taken.path("atHand").path("agreements")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void refusedAgreement_endsWithItsTerm_andIsToldSo(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        assertThat(shop.problems("agreement", "refuse", BAKERY, "--way", "mail", "--on", "2027-01-02")).containsExactly(
                ":0: day: 2027-01-02 is still to come: today is 2026-12-30 (today or an earlier day)");

        JsonNode told = shop.json("agreement", "refuse", BAKERY, "--way", "certified-mail", "--on", "2026-12-20");

        assertThat(told.path("stage").asString()).isEqualTo("notice-given");
        assertThat(told.path("lastDay").asString()).isEqualTo("2027-05-31");
        assertThat(renewals(shop)).doesNotContain(BAKERY);
        assertThat(shop.problems("agreement", "renewal", BAKERY, "--date", "2027-03-05")).singleElement().asString()
                .contains("it ends on 2027-05-31 and does not go on");
    }

    /**
     * By hand: New York wants the notice 15 to 30 days before the last day to refuse, in person or by certified mail (General Obligations Law,
     * section 5-903); of a year that may be refused until 1 April 2027 that is from 2 to 17 March.
     */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void noticeOfRenewal_countsByItsWayAndDay_andTheListSaysWhy(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        assertThat(next(shop, MARCH)).isEqualTo("send");

        notice(shop, MARCH, "--way", "mail", "--sent", "2027-03-08");
        assertThat(row(shop, MARCH).path("notices").get(0).path("why").get(0).asString())
                .isEqualTo("N.Y. General Obligations Law 5-903 does not know this way: mail.");
        notice(shop, MARCH, "--way", "certified-mail", "--sent", "2027-03-01");
        assertThat(row(shop, MARCH).path("notices").get(1).path("why").get(0).asString())
                .isEqualTo("By N.Y. General Obligations Law 5-903 the day March 1, 2027 is outside the window from"
                        + " March 2, 2027 to March 17, 2027.");
        assertThat(next(shop, MARCH)).isEqualTo("send");
        assertThat(next(shop, APRIL)).isEqualTo("too-late");

        notice(shop, MARCH, "--way", "certified-mail", "--sent", "2027-03-08", "--tracking", "9407 1", "--by", "Ada");
        assertThat(next(shop, MARCH)).isEqualTo("ask-whether-it-arrived");
        notice(shop, MARCH, "--received", "2027-03-10");
        assertThat(next(shop, MARCH)).isEqualTo("served");
        assertThat(row(shop, MARCH).path("notices").get(2).path("served").asBoolean()).isTrue();
        assertThat(next(shop, APRIL)).isEqualTo("renew");
    }

    /** By hand: 1,075.00 raised by 4 % is 1,118.00, to the nearest 5.00 1,120.00; by the quarter 280.00. */
    @ParameterizedTest
    @EnumSource
    void renewedAgreement_isTheNextTermAtItsPrice_withNothingTypedAgain(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        assertThat(shop.runAt(APRIL, "agreement", "renew", BAKERY).err()).contains(
                "no notice counts by ny-5-903, so it may not bind the customer");
        assertThat(shop.runAt(MARCH, "agreement", "renew", BAKERY).err()).contains(
                "the customer may refuse until 2027-04-01");

        JsonNode next = shop.runAt(APRIL, "agreement", "renew", BAKERY, "--agreed-by", "J. Baker", "--json").json();

        assertThat(next.path("agreement").asString()).isEqualTo("A-2027-001");
        assertThat(next.path("from").asString() + " " + next.path("until").asString())
                .isEqualTo("2027-06-01 2028-05-31");
        assertThat(next.path("yearPrice").asString()).isEqualTo("1120.00");
        assertThat(next.path("payments")).hasSize(4).extracting(payment -> payment.path("net").asString())
                .containsOnly("280.00");
        assertThat(next.path("sites").get(0).path("site").asString()).isEqualTo("crumb-lane-bakery");
        assertThat(next.path("steps").get(0).path("told").asString()).isEqualTo("It is what A-2026-004 went on as.");
        assertThat(shop.json("agreement", "show", BAKERY).path("steps").get(0).path("told").asString())
                .isEqualTo("It goes on as A-2027-001, J. Baker");
        assertThat(shop.runAt(APRIL, "agreement", "renew", BAKERY, "--agreed-by", "J. Baker").err())
                .contains("it goes on as A-2027-001 already");
        assertThat(shop.runAt(JUNE, "agreement", "show", BAKERY, "--json").json().path("stage").asString())
                .isEqualTo("renewed");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** The visit of March is missed; that of June is the first of the next term, and not that of March made late. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void visitOfTheNextTerm_isNoneOfTheTermBefore(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        assertThat(shop.runAt(APRIL, "agreement", "renew", BAKERY, "--agreed-by", "J. Baker").status()).isZero();
        Run stored = shop.runAt(JUNE, "visit", "add",
                shop.write("visits/of-june.yaml",
                        """
                                format: 1
                                form: visit
                                site: crumb-lane-bakery
                                people:
                                  - {name: Lead technician, grade: lead, arrived: 2027-06-01T09:00, left: 2027-06-01T10:30, on: cleaning}
                                """)
                        .toString());
        assertThat(stored.status()).as(stored.err()).isZero();

        assertThat(done(shop, BAKERY)).doesNotContain("2027-03-01 of-june");
        assertThat(done(shop, "A-2027-001")).contains("2027-06-01 of-june");
    }

    /**
     * The fish market pays each visit when it is done, those of 1 June and 1 December; the one of December is missed. By hand a visit of 20 May
     * is 12 days from the first of the next term, and 170 from that of December: it is the former, and is billed once.
     */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void visitShortlyBeforeARenewal_isTheFirstOfTheNextTerm_andThatAlone(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        assertThat(shop.runAt(APRIL, "agreement", "renew", MARKET, "--agreed-by", "R. Mar").status()).isZero();
        cleaned(shop, "2027-05-20");

        assertThat(done(shop, MARKET)).containsExactly("2026-06-01 ", "2026-12-01 ");
        assertThat(done(shop, "A-2027-001")).containsExactly("2027-06-01 cleaned-2027-05-20", "2027-12-01 ");
        assertThat(paid(shop)).containsExactly("A-2027-001 1");
        assertThat(standings(shop)).isEmpty();
    }

    /** Before it was renewed, the same visit was billed as that of December made late: it stays that, and the next term begins with one of its own. */
    @ParameterizedTest
    @EnumSource
    void visitShortlyBeforeARenewal_thatWasBilled_isNotBilledAgain(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        cleaned(shop, "2027-05-20");
        assertThat(shop.runAt(JUNE, "invoice", "issue", MARKET, "--installment", "2", "--date", "2027-05-21",
                "--out-of-order").err()).isEmpty();
        assertThat(shop.runAt(on("2027-05-25"), "agreement", "renew", MARKET, "--agreed-by", "R. Mar").status())
                .isZero();

        assertThat(done(shop, MARKET)).containsExactly("2026-06-01 ", "2026-12-01 cleaned-2027-05-20");
        assertThat(done(shop, "A-2027-001")).containsExactly("2027-06-01 ", "2027-12-01 ");
        assertThat(paid(shop)).isEmpty();
        assertThat(standings(shop)).containsExactly("A-2027-001 2027-06-01 late");
        cleaned(shop, "2027-05-30");
        assertThat(done(shop, "A-2027-001")).containsExactly("2027-06-01 cleaned-2027-05-30", "2027-12-01 ");
        assertThat(paid(shop)).containsExactly("A-2027-001 1");
    }

    /** What the fish market is to be billed for. */
    private static List<String> paid(BookShop shop) {
        return shop.runAt(JUNE, "invoice", "due", "--until", "2027-06-02", "--json").json().path("installments")
                .valueStream().map(one -> one.path("agreement").asString() + " " + one.path("number").asInt())
                .filter(one -> one.startsWith("A-2027") || one.startsWith(MARKET)).toList();
    }

    /** Visits of 2027 at the fish market that are to be made. */
    private static List<String> standings(BookShop shop) {
        return shop.runAt(JUNE, "visit", "due", "--until", "2027-06-03", "--json").json().path("weeks").valueStream()
                .flatMap(week -> week.path("visits").valueStream())
                .filter(visit -> visit.path("site").asString().equals("mercado-del-mar"))
                .map(visit -> visit.path("agreement").asString() + " " + visit.path("due").asString() + " "
                        + visit.path("state").asString())
                .filter(visit -> visit.contains(" 2027-")).toList();
    }

    private static void cleaned(BookShop shop, String day) throws IOException {
        Run stored = shop.runAt(JUNE, "visit", "add", shop.write("visits/cleaned-" + day + ".yaml", """
                format: 1
                form: visit
                site: mercado-del-mar
                people:
                  - {name: Lead technician, grade: lead, arrived: %1$sT09:00, left: %1$sT10:30, on: cleaning}
                machines:
                  - machine: mostrador
                    tasks: [{task: flush, outcome: included}]
                """.formatted(day)).toString());
        assertThat(stored.status()).as(stored.err()).isZero();
    }

    private static List<String> done(BookShop shop, String agreement) {
        return shop.runAt(JUNE, "agreement", "show", agreement, "--json").json().path("visits").valueStream()
                .map(visit -> visit.path("day").asString() + " " + visit.path("done").asString("")).toList();
    }

    private static void notice(BookShop shop, Clock clock, String... said) {
        Run run = shop.runAt(clock, Stream.of(List.of("agreement", "notice", BAKERY), List.of(said))
                .flatMap(List::stream).toArray(String[]::new));
        assertThat(run.status()).as(run.err()).isZero();
    }

    private static JsonNode row(BookShop shop, Clock clock) {
        return shop.runAt(clock, "agreement", "renewals", "--json").json().path("renewals").valueStream()
                .filter(row -> row.path("agreement").asString().equals(BAKERY)).findFirst().orElseThrow();
    }

    private static String next(BookShop shop, Clock clock) {
        return row(shop, clock).path("next").asString();
    }

    private BookShop billed(Database database, int payments) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        for (int payment = 1; payment <= payments; payment++) {
            shop.json("invoice", "issue", BAKERY, "--installment", String.valueOf(payment), "--date",
                    "2026-06-0" + payment);
        }
        return shop;
    }

    private static String[] line(String... more) {
        return Stream.of(List.of("agreement", "end", BAKERY, "--way", "mail", "--on", "2026-12-01"), List.of(more))
                .flatMap(List::stream).toArray(String[]::new);
    }

    private static List<String> due(BookShop shop) {
        return shop.json("invoice", "due", "--until", "2027-05-31").path("installments").valueStream()
                .filter(one -> one.path("agreement").asString().equals(BAKERY))
                .map(one -> one.path("number").asInt() + " " + one.path("net").asString()).toList();
    }

    private static String stage(BookShop shop) {
        return shop.json("agreement", "show", BAKERY).path("stage").asString();
    }

    private static String renewals(BookShop shop) {
        return shop.run("agreement", "renewals").out();
    }
}
