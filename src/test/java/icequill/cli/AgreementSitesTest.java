package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.math.BigDecimal;
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
 * Whole sites that come into an agreement, or go out of it, in mid-term: coffee rooms of one owner, a year from 1 June 2026 by the quarter, at first
 * for one room with one machine. By hand such a room is 654.50 at list, less 5 % 621.78, and to the nearest 5.00 620.00; with the back room's
 * machine Main Street is 1,087.58, less 5 % 1,033.20, so 1,035.00.
 */
@Tag("wide")
class AgreementSitesTest {

    private static final String NUMBER = "A-2026-007";

    @TempDir
    private Path folder;

    /**
     * By hand: from 1 August 304 of 365 days are left, 620.00 x 304 / 365 = 516.38, over three payments of 155.00 each 172.13, 172.13 and 172.12
     * more. The back room from 17 October: 415.00 x 227 / 365 = 258.10, over two. All is billed; from 15 January 137 days are left, and 1,035.00 x
     * 137 / 365 = 388.48 go back: the last payment's 301.17, then 87.31 of the third, with 8.875 % of tax 327.90 and 95.06. The second way Main
     * Street keeps 77 days of 620.00 and 90 of 1,035.00: 130.79 + 255.21 = 386.00 = 516.38 + 258.10 - 388.48. By the end on 29 January 243 days of
     * the first room's 620.00 are earned, 412.77, and 207.23 of it go back.
     */
    @ParameterizedTest
    @EnumSource
    void siteThroughItsLife_paysForItsDays(Database database) throws IOException {
        BookShop shop = coffeeRooms(database);
        issued(shop, 1);
        String[] comes = change("--first-day", "2026-08-01", "--add-site", "lantern-main-street", "--add", "counter");
        JsonNode would = shop.run(with(comes, "--json")).json();
        assertThat(would.path("tried").asBoolean()).isTrue();
        assertThat(show(shop).path("sites")).hasSize(1);

        JsonNode in = shop.json(with(comes, "--agreed-by", "J. Baker", "--words", "Bought.", "--yes"));

        assertThat(in.path("price")).isEqualTo(would.path("price"));
        assertThat(amount(in)).isEqualTo("516.38");
        assertThat(in.path("yearBefore").asString() + " " + in.path("yearAfter").asString())
                .isEqualTo("620.00 1240.00");
        assertThat(payments(in)).containsExactly("2 155.00 327.13", "3 155.00 327.13", "4 155.00 327.12");
        assertThat(texts(in.path("visits"))).containsExactly("2026-12-01");
        assertThat(amount(shop.json(change("--first-day", "2026-10-17", "--site", "lantern-main-street", "--add",
                "back-room", "--yes")))).isEqualTo("258.10");
        assertThat(agreementOfCall(shop, "2026-08-01T10:00")).isEqualTo(NUMBER);
        issued(shop, 2, 3, 4);

        JsonNode out = shop.json(change("--first-day", "2027-01-15", "--remove-site", "lantern-main-street", "--yes"));

        assertThat(amount(out)).isEqualTo("-388.48");
        assertThat(texts(out.path("credits"), "gross")).containsExactlyInAnyOrder("-327.90", "-95.06");
        assertThat(show(shop).path("payments").valueStream().map(payment -> payment.path("net").asString() + " "
                + payment.path("givenBack").asString())).containsExactly("155.00 0.00", "327.13 0.00",
                        "456.18 87.31", "456.17 301.17");
        assertThat(texts(show(shop).path("steps"), "told")).containsExactly(
                "From August 1, 2026 it changes: + Lantern Coffee Main Street (counter), J. Baker.",
                "From October 17, 2026 it changes: Lantern Coffee Main Street: + back room.",
                "From January 15, 2027 it changes: - Lantern Coffee Main Street.");
        JsonNode ended = shop.json("agreement", "end", NUMBER, "--way", "mail", "--on", "2026-12-30", "--yes");
        assertThat(ended.path("lastDay").asString() + " " + ended.path("back").path("amount").asString())
                .isEqualTo("2027-01-29 207.23");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** From its first day on the site has the plan's visits, its calls are the agreement's, and from its last one on they are not. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void siteOfMidTerm_isLookedAfterOnItsDays(Database database) throws IOException {
        BookShop shop = coffeeRooms(database);
        shop.json(change("--first-day", "2026-08-01", "--add-site", "lantern-main-street", "--yes"));
        cleaned(shop, "too-early", "2026-07-30");
        assertThat(agreementOfCall(shop, "2026-07-31T10:00")).isEmpty();
        assertThat(agreementOfCall(shop, "2026-08-01T10:00")).isEqualTo(NUMBER);
        assertThat(due(shop)).containsExactly("lantern-depot 2026-06-01", "lantern-depot 2026-12-01",
                "lantern-main-street 2026-12-01");
        assertThat(show(shop).path("visits").valueStream().filter(visit -> visit.has("done"))).isEmpty();

        cleaned(shop, "december", "2026-12-03");
        issued(shop, 1, 2, 3);
        shop.json(change("--first-day", "2026-12-10", "--remove-site", "lantern-main-street", "--yes"));

        assertThat(due(shop)).containsExactly("lantern-depot 2026-06-01", "lantern-depot 2026-12-01",
                "lantern-main-street 2026-12-01");
        assertThat(texts(show(shop).path("visits"), "done")).containsExactly("", "", "december");
        assertThat(agreementOfCall(shop, "2026-12-09T10:00")).isEqualTo(NUMBER);
        assertThat(agreementOfCall(shop, "2026-12-10T10:00")).isEmpty();
    }

    /**
     * What comes in by steps is paid and renewed as what the first paper says: two rooms of 620.00 and one of 1,035.00 of which the third comes on 1
     * October, 243 days of 620.00 = 412.77. The room that went out is not renewed.
     */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void sitesThatCameIn_areBilledAndRenewed(Database database) throws IOException {
        BookShop shop = coffeeRooms(database);
        shop.json(change("--first-day", "2026-07-01", "--add-site", "lantern-main-street", "--yes"));
        shop.json(change("--first-day", "2026-10-01", "--add-site", "lantern-ceniza", "--yes"));
        // 1,035.00 x 335 / 365 = 949.93 over three; 412.77 over two
        assertThat(shop.json("invoice", "due", "--until", "2027-05-31").path("installments").valueStream()
                .filter(one -> one.path("agreement").asString().equals(NUMBER)).map(one -> one.path("net").asString()))
                .containsExactly("155.00", "471.65", "678.03", "678.02");
        issued(shop, 1, 2, 3);
        shop.json(change("--first-day", "2026-12-31", "--remove-site", "lantern-depot", "--yes"));
        assertThat(shop.run("agreement", "print", NUMBER).out()).contains("agreement-A-2026-007");

        JsonNode next = shop.json("agreement", "renew", NUMBER, "--agreed-by", "J. Baker");

        assertThat(texts(next.path("sites"), "site")).containsExactly("lantern-main-street", "lantern-ceniza");
        assertThat(next.path("sites").get(0).path("all").valueStream()
                .map(machine -> machine.path("machine").asString() + " " + machine.path("agreed").asBoolean()))
                .containsExactly("counter true", "back-room true");
        // 2 % more, to the nearest 5.00: 1,055.70 and 632.40
        assertThat(next.path("yearPrice").asString()).isEqualTo("1685.00");
    }

    /**
     * The new owner of the rooms has none that went out before, and what he has elsewhere comes in for days of the rest that he took over. By hand a
     * kitchen of the hotel is 717.08 at list, less 5 % 681.23, so 680.00; 168 of 365 days of it are 312.99, all in the last payment.
     */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void afterASale_roomsOfTheNewOwnerComeIn(Database database) throws IOException {
        BookShop shop = coffeeRooms(database);
        shop.json(change("--first-day", "2026-07-01", "--add-site", "lantern-main-street", "--yes"));
        shop.json(change("--first-day", "2026-09-01", "--remove-site", "lantern-main-street", "--yes"));
        issued(shop, 1, 2);

        String next = shop
                .json("agreement", "transfer", NUMBER, "--to", "fernhill-hotels", "--on", "2026-10-01", "--yes")
                .path("next").asString();

        assertThat(texts(shop.json("agreement", "show", next).path("sites"), "site")).containsExactly("lantern-depot");
        assertThat(shop.json("show", "lantern-main-street").toString()).contains("lantern-coffee-rooms");
        assertThat(shop.problems("agreement", "change", next, "--first-day", "2026-11-01", "--add-site",
                "lantern-main-street")).containsExactly(":0: addSite: lantern-main-street belongs to"
                        + " lantern-coffee-rooms on 2026-11-01 (a site of fernhill-hotels)");
        assertThat(shop.problems("agreement", "change", next, "--first-day", "2026-12-15", "--add-site",
                "hotel-fernhill", "--add", "lobby-bar")).singleElement().asString()
                .contains("agreement A-2026-002 looks after lobby-bar already");
        JsonNode in = shop.json("agreement", "change", next, "--first-day", "2026-12-15", "--add-site",
                "hotel-fernhill", "--add", "main-kitchen", "--yes");
        assertThat(amount(in)).isEqualTo("312.99");
        assertThat(in.path("payments").valueStream().map(payment -> new BigDecimal(payment.path("net").asString())
                .subtract(new BigDecimal(payment.path("before").asString())).toPlainString()))
                .containsExactly("0.00", "0.00", "312.99");
        assertThat(in.path("visits")).isEmpty();
    }

    /** All that is wrong is said at once, and nothing is stored. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void wrongChange_isRefused(Database database) throws IOException {
        BookShop shop = coffeeRooms(database);
        shop.json(
                change("--first-day", "2026-08-01", "--add-site", "lantern-main-street", "--add", "counter", "--yes"));
        cleaned(shop, "december", "2026-12-03");

        Map.of("--add-site hotel-fernhill --add nothing --site lantern-depot", List.of(
                "addSite: more than a site that comes in and its machines",
                "addSite: hotel-fernhill belongs to fernhill-hotels on 2026-12-03 (a site of lantern-coffee-rooms)",
                "add: there is no machine \"nothing\""),
                "--add-site nowhere", List.of("addSite: there is no site of this customer \"nowhere\" (allowed:"
                        + " lantern-ceniza)"),
                "--add-site lantern-depot", List.of("site: lantern-depot is a site of this agreement already"),
                "--remove-site lantern-ceniza --add counter", List.of("removeSite: a site goes out with all",
                        "removeSite: there is no site of this agreement \"lantern-ceniza\""),
                "--remove-site lantern-main-street", List.of("from: visit december was done there on 2026-12-03"),
                "--add back-room", List.of("site: the agreement is for several sites"))
                .forEach((options, wrong) -> {
                    List<String> found = shop.problems(change(Stream.concat(
                            Stream.of("--first-day", "2026-12-03", "--yes"), Stream.of(options.split(" ")))
                            .toArray(String[]::new)));
                    assertThat(found).as(options).hasSameSizeAs(wrong);
                    wrong.forEach(text -> assertThat(found).as(options).anyMatch(each -> each.contains(text)));
                });
        assertThat(shop.problems(change("--first-day", "2026-07-01", "--remove-site", "lantern-depot", "--yes")))
                .singleElement().asString().contains("no other site is part of it from 2026-07-01 to its end");

        assertThat(shop.problems("site", "merge", "lantern-main-street", "--into", "lantern-depot", "--yes"))
                .anyMatch(text -> text.contains("agreement \"lantern-coffee\" is over both sites"));
        assertThat(show(shop).path("steps")).hasSize(1);
    }

    /** With two rooms 10 % are off, from the day on which the second comes: 654.50 less 10 % is 590.00, for both. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void discountOfAll_followsOnTheSameDay(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        Path tiers = shop.folder().resolve("pricing/tiers.yaml");
        Files.writeString(tiers, Files.readString(tiers).replaceFirst("    discount: 5 ",
                "    siteDiscount: [{from: 2, percent: 10}]\n    discount: 5 "));
        alone(shop);

        JsonNode in = shop.json(change("--first-day", "2026-10-01", "--add-site", "lantern-ceniza", "--yes"));

        // 590.00 x 243 / 365 = 392.79; (590.00 - 620.00) x 243 / 365 = -19.97
        assertThat(texts(in.path("price"), "amount")).containsExactly("-19.97", "392.79");
        // 372.82 over two payments of 155.00
        assertThat(payments(in)).containsExactly("1 155.00 155.00", "2 155.00 155.00", "3 155.00 341.41",
                "4 155.00 341.41");
    }

    private BookShop coffeeRooms(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        alone(shop);
        return shop;
    }

    /** The agreement while it is for the room at the depot alone. */
    private static void alone(BookShop shop) throws IOException {
        shop.json("import", shop.write("depot-year.yaml", """
                format: 1
                form: agreement
                id: lantern-coffee
                number: A-2026-007
                site: lantern-depot
                tier: semiannual
                priced: 2026-05-14
                accepted: {date: 2026-05-19, paper: signed quote by mail}
                start: 2026-06-01
                months: 12
                billing: quarterly
                renewal: {months: 12, refuseDays: 30, jurisdictions: [US-NY], raise: {percent: 2}}
                """).toString());
    }

    private static void issued(BookShop shop, int... payments) {
        for (int payment : payments) {
            shop.json("invoice", "issue", NUMBER, "--installment", String.valueOf(payment), "--date", "2026-12-30");
        }
    }

    private static void cleaned(BookShop shop, String visit, String day) throws IOException {
        shop.json("visit", "add", shop.write(visit + ".yaml", """
                format: 1
                form: visit
                id: %1$s
                site: lantern-main-street
                people:
                  - {name: Ada Quill, grade: lead, arrived: %2$sT09:00, left: %2$sT10:00, on: cleaning}
                """.formatted(visit, day)).toString());
    }

    private static String[] change(String... more) {
        return with(new String[]{"agreement", "change", NUMBER}, more);
    }

    private static String[] with(String[] first, String... more) {
        return Stream.concat(Stream.of(first), Stream.of(more)).toArray(String[]::new);
    }

    private static JsonNode show(BookShop shop) {
        return shop.json("agreement", "show", NUMBER);
    }

    private static String amount(JsonNode change) {
        return change.path("price").get(0).path("amount").asString();
    }

    private static List<String> payments(JsonNode change) {
        return change.path("payments").valueStream().map(payment -> payment.path("number").asInt() + " "
                + payment.path("before").asString() + " " + payment.path("net").asString()).toList();
    }

    private static List<String> texts(JsonNode list, String key) {
        return list.valueStream().map(one -> one.path(key).asString("")).toList();
    }

    private static List<String> texts(JsonNode list) {
        return list.valueStream().map(JsonNode::asString).toList();
    }

    private static List<String> due(BookShop shop) {
        return shop.json("visit", "due", "--date", "2026-06-01", "--until", "2027-06-30").path("weeks").valueStream()
                .flatMap(week -> week.path("visits").valueStream())
                .filter(visit -> visit.path("agreement").asString().equals(NUMBER))
                .map(visit -> visit.path("site").asString() + " " + visit.path("due").asString()).toList();
    }

    private static String agreementOfCall(BookShop shop, String at) {
        return shop.json("call", "take", "lantern-main-street", "--machine", "counter", "--by", "Bram", "--symptom",
                "No ice.", "--at", at).path("call").path("agreement").asString("");
    }
}
