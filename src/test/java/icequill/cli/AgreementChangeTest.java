package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/**
 * Machines that come into an agreement, or go out of it, in mid-term: a hotel's calendar year of 2026 by the quarter, with two cleanings. By hand
 * each machine is 122.75, flat, and a filter of 87.25 a cleaning, so 420.00 a year; with the service call of 52.00 a cleaning one comes to 524.00,
 * and to the nearest 5.00 to 525.00.
 */
@Tag("wide")
class AgreementChangeTest {

    private static final String NUMBER = "A-2026-090";

    @TempDir
    private Path folder;

    /**
     * By hand: from 17 May 229 of 365 days are left, 420.00 x 229 / 365 = 263.51, over two payments of 131.25 each 131.76 and 131.75 more. From 17
     * October 76 days are left, and 87.45 go back of the last payment, with 8.875 % of tax 95.21. All that was billed, less that, is what is
     * earned: 525.00 + 263.51 - 87.45 = 701.06.
     */
    @ParameterizedTest
    @EnumSource
    void machineOfMidTerm_isPaidByTheDay_andGoesAgain(Database database) throws IOException {
        BookShop shop = hotel(database);
        issued(shop, 1, 2);

        JsonNode would = shop.run(change("--first-day", "2026-05-17", "--add", "main-kitchen", "--json")).json();
        assertThat(would.path("tried").asBoolean()).isTrue();
        assertThat(steps(shop)).isEmpty();
        JsonNode added = shop.json(change("--first-day", "2026-05-17", "--add", "main-kitchen", "--agreed-by",
                "J. Baker", "--words", "The new bar.", "--yes"));

        assertThat(added.path("price").get(0)).isEqualTo(would.path("price").get(0));
        assertThat(added.path("price").get(0).path("amount").asString()).isEqualTo("263.51");
        assertThat(added.path("yearBefore").asString() + " " + added.path("yearAfter").asString())
                .isEqualTo("525.00 945.00");
        assertThat(payments(added)).containsExactly("3 131.25 263.01", "4 131.25 263.00");
        assertThat(steps(shop)).containsExactly("From May 17, 2026 it changes: + main kitchen, J. Baker.");
        assertThat(shop.json("invoice", "due", "--until", "2026-12-31").path("installments").valueStream()
                .filter(one -> one.path("agreement").asString().equals(NUMBER)).map(one -> one.path("net").asString()))
                .containsExactly("263.01", "263.00");
        issued(shop, 3, 4);

        JsonNode removed = shop.json(change("--first-day", "2026-10-17", "--remove", "main-kitchen", "--yes"));

        assertThat(removed.path("price").get(0).path("amount").asString()).isEqualTo("-87.45");
        assertThat(removed.path("credits")).extracting(paper -> paper.path("gross").asString())
                .containsExactly("-95.21");
        assertThat(shop.json("agreement", "show", NUMBER).path("payments")).extracting(
                payment -> payment.path("net").asString() + " " + payment.path("givenBack").asString())
                .containsExactly("131.25 0.00", "131.25 0.00", "263.01 0.00", "263.00 87.45");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** On 17 May the second machine is not part of the first visit, but of the second; a call for it is promised what the agreement has from then on. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void machineOfMidTerm_isPartOfWhatFollows(Database database) throws IOException {
        BookShop shop = hotel(database);
        shop.json(change("--first-day", "2026-05-17", "--add", "main-kitchen", "--yes"));

        assertThat(shop.json("visit", "due", "--date", "2026-05-01", "--until", "2026-12-31").path("weeks")
                .valueStream().flatMap(week -> week.path("visits").valueStream())
                .filter(visit -> visit.path("agreement").asString().equals(NUMBER))
                .map(visit -> visit.path("due").asString() + " " + visit.path("machines") + " "
                        + visit.path("minutes").asInt()))
                .containsExactly("2026-01-01 [\"banquet\"] 104", "2026-07-01 [\"banquet\",\"main-kitchen\"] 158");
        assertThat(agreementOfCall(shop, "2026-05-16T10:00")).isEmpty();
        assertThat(agreementOfCall(shop, "2026-05-18T10:00")).isEqualTo(NUMBER);
        assertThat(shop.run("agreement", "print", NUMBER).out()).contains("agreement-A-2026-090");
    }

    /** By hand, by days: of 525.00 + 263.51 what is earned by 16 June is 525.00 x 167 / 365 + 263.51 x 31 / 229 = 275.88; 262.50 was asked for. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void endAfterAChange_settlesWhatBothEarned(Database database) throws IOException {
        BookShop shop = hotel(database);
        shop.json(change("--first-day", "2026-05-17", "--add", "main-kitchen", "--yes"));
        issued(shop, 1, 2, 3);

        JsonNode ended = shop.json("agreement", "end", NUMBER, "--way", "mail", "--on", "2026-05-17", "--yes");

        assertThat(ended.path("lastDay").asString()).isEqualTo("2026-06-16");
        // 131.25 + 131.25 + 263.01 paid, less 275.88
        assertThat(ended.path("back").path("amount").asString()).isEqualTo("249.63");
        assertThat(shop.problems(change("--first-day", "2026-06-01", "--remove", "main-kitchen"))).singleElement()
                .asString().contains("notice was given on 2026-05-17 already");
    }

    /** What is wrong is said, and nothing is stored. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void wrongChange_isRefused(Database database) throws IOException {
        BookShop shop = hotel(database);

        Map.of("--add nowhere", "add: there is no machine \"nowhere\"",
                "--add banquet", "add: banquet is looked after already",
                "--remove main-kitchen", "remove: main-kitchen is not looked after",
                "--remove banquet", "no machine is left on 2026-10-17",
                "--add floor-6", "add: on 2026-10-17 agreement A-2026-002 looks after floor-6 already",
                "--add main-kitchen --site elsewhere", "site: there is no site of this agreement \"elsewhere\"",
                "--add main-kitchen --on 2027-01-02", "day: 2027-01-02 is still to come: today is 2026-12-30")
                .forEach((options, problem) -> assertThat(shop.problems(change(Stream
                        .concat(Stream.of("--first-day", "2026-10-17", "--yes"), Stream.of(options.split(" ")))
                        .toArray(String[]::new)))).as(options).anyMatch(text -> text.contains(problem)));

        assertThat(steps(shop)).isEmpty();
    }

    /** What goes back of a payment that nobody was billed for would be given to nobody. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void removal_thatGivesBackOfWhatIsNotBilled_asksForTheBillFirst(Database database) throws IOException {
        BookShop shop = hotel(database);
        shop.json(change("--first-day", "2026-05-17", "--add", "main-kitchen", "--yes"));

        assertThat(shop.problems(change("--first-day", "2026-10-17", "--remove", "main-kitchen", "--yes")))
                .containsExactly(":0: from: part of installment 4 would go back, and it is not billed yet"
                        + " (that installment billed first: icequill invoice due)");
    }

    private BookShop hotel(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        Path tiers = shop.folder().resolve("pricing/tiers.yaml");
        Files.writeString(tiers, Files.readString(tiers).replaceFirst("(?m)^exclusions:", """
                flat:
                  further: 0
                  machines:
                    - {scope: full-clean, make: batch, upTo: 1200, price: 122.75}

                exclusions:""").replaceFirst("discount: 5 ", "discount: 0 "));
        shop.json("rates", "adopt", "--yes");
        shop.json("import", shop.write("hotel-year.yaml", """
                format: 1
                form: agreement
                id: hotel-year
                number: A-2026-090
                site: hotel-fernhill
                machines: [banquet]
                tier: semiannual
                priced: 2026-01-05
                accepted: {date: 2025-12-20, paper: order 7}
                start: 2026-01-01
                months: 12
                billing: quarterly
                renewal: {months: 12, refuseDays: 60, jurisdictions: [US-NY]}
                """).toString());
        return shop;
    }

    private static void issued(BookShop shop, int... payments) {
        for (int payment : payments) {
            shop.json("invoice", "issue", NUMBER, "--installment", String.valueOf(payment), "--date", "2026-12-30");
        }
    }

    private static String[] change(String... more) {
        return Stream.concat(Stream.of("agreement", "change", NUMBER), Stream.of(more)).toArray(String[]::new);
    }

    private static List<String> payments(JsonNode change) {
        return change.path("payments").valueStream().map(payment -> payment.path("number").asInt() + " "
                + payment.path("before").asString() + " " + payment.path("net").asString()).toList();
    }

    private static List<String> steps(BookShop shop) {
        return shop.json("agreement", "show", NUMBER).path("steps").valueStream()
                .map(step -> step.path("told").asString()).toList();
    }

    private static String agreementOfCall(BookShop shop, String at) {
        return shop.json("call", "take", "hotel-fernhill", "--machine", "main-kitchen", "--by", "Bram", "--symptom",
                "No ice.", "--at", at).path("call").path("agreement").asString("");
    }
}
