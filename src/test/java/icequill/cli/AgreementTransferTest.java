package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** A bakery is sold, and its new owner takes over the rest of the agreement: 1,075.00 from 1 June 2026 for a year, by the quarter. */
@Tag("wide")
class AgreementTransferTest {

    private static final String OLD = "A-2026-004";

    @TempDir
    private Path folder;

    /**
     * By hand: to 14 September 106 of 365 days are gone, and 1,075.00 x 106 / 365 = 312.19 are earned; of the 537.50 that were billed 225.31 go back,
     * with 8.875 % of tax 245.31. The second way, by the days that are left: 1,075.00 x 259 / 365 = 762.81, and 312.19 + 762.81 = 1,075.00. Of
     * the running quarter's 91 days 77 are left: 762.81 by 77 : 91 : 91.
     */
    @ParameterizedTest
    @EnumSource
    void restOfTheTerm_isTheNewOwners_andBothPayAllOfIt(Database database) throws IOException {
        BookShop shop = bakery(database, 1, 2);
        visit(shop, "june", "2026-06-02", "cleaning");

        JsonNode would = shop.run(transfer("--json")).json();
        assertThat(would.path("tried").asBoolean()).isTrue();
        assertThat(show(shop, OLD).path("stage").asString()).isEqualTo("in-force");
        JsonNode done = shop.json(transfer("--agreed-by", "M. Marlow", "--order", "PO-31", "--yes"));

        assertThat(done.path("back")).isEqualTo(would.path("back"));
        assertThat(done.path("back").path("amount").asString()).isEqualTo("225.31");
        assertThat(texts(done.path("credits"), "gross")).containsExactly("-245.31");
        assertThat(done.path("rest").get(0).path("amount").asString()).isEqualTo("762.81");
        assertThat(done.path("rest").get(0).path("how").asString()).contains("1,075.00", "312.19");
        assertThat(done.path("payments").valueStream().map(one -> one.path("due").asString() + " "
                + one.path("net").asString())).containsExactly("2026-09-15 226.78", "2026-12-01 268.02",
                        "2027-03-01 268.01");
        // 1 September was late, and is due to the new owner on his first day
        assertThat(texts(done.path("visits"), "day")).containsExactly("2026-09-15", "2026-12-01", "2027-03-01");

        String next = done.path("next").asString();
        JsonNode old = show(shop, OLD);
        assertThat(old.path("stage").asString() + " " + old.path("lastDay").asString() + " "
                + old.path("customer").asString()).isEqualTo("ended-by-transfer 2026-09-14 crumb-lane-bakery");
        assertThat(texts(old.path("visits"), "done")).containsExactly("june");
        JsonNode now = show(shop, next);
        assertThat(now.path("stage").asString() + " " + now.path("from").asString() + " "
                + now.path("until").asString() + " " + now.path("customer").asString() + " "
                + now.path("purchaseOrder").asString()).isEqualTo("in-force 2026-09-15 2027-05-31 marlow-cafe PO-31");
        assertThat(kept(old).add(kept(now))).isEqualByComparingTo("1075.00");
        assertThat(texts(old.path("steps"), "told")).containsExactly("Its owner changed: " + next
                + " took over the rest from September 15, 2026 on, M. Marlow.");
        assertThat(texts(now.path("steps"), "told"))
                .containsExactly(
                        "It is the rest of A-2026-004, taken over from its former owner on September 15, 2026.");
        assertThat(due(shop, "2026-12-30")).containsExactly(next + " 1 226.78", next + " 2 268.02");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** What was done before that day is billed to the former owner, whenever that is recorded, and what comes after it to the new one. */
    @ParameterizedTest
    @EnumSource
    void visits_areBilledToWhoeverOwnsTheSiteThen(Database database) throws IOException {
        BookShop shop = bakery(database, 1, 2);
        visit(shop, "before", "2026-09-10", "repair");
        JsonNode done = shop.json(transfer("--yes"));
        assertThat(done.path("toBill").toString()).isEqualTo("[\"before\"]");
        visit(shop, "late", "2026-09-14", "repair");
        visit(shop, "after", "2026-09-15", "repair");
        String next = done.path("next").asString();

        assertThat(bill(shop, "before")).contains("Crumb Lane Bakery, Inc.", "agreement A-2026-004, 10% off");
        assertThat(bill(shop, "late")).contains("Crumb Lane Bakery, Inc.");
        assertThat(bill(shop, "after")).contains("Bill to Marlow Cafe", "agreement " + next + ", 10% off");
        assertThat(bill(shop, next, "--installment", "1")).contains("Bill to Marlow Cafe");
        assertThat(shop.json("find", "Marlow Cafe").path("papers")).hasSize(2);
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** The visit of 1 September that is done early or late is due to nobody twice. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void visitsOfTheCalendar_areDueOnce(Database database) throws IOException {
        BookShop shop = bakery(database, 1, 2);
        visit(shop, "june", "2026-06-02", "cleaning");
        visit(shop, "september", "2026-09-08", "cleaning");
        String next = shop.json(transfer("--yes")).path("next").asString();

        assertThat(texts(show(shop, OLD).path("visits"), "done")).containsExactly("june", "september");
        assertThat(texts(show(shop, next).path("visits"), "day")).containsExactly("2026-12-01", "2027-03-01");
        visit(shop, "december", "2026-12-02", "cleaning");
        assertThat(texts(show(shop, next).path("visits"), "done")).containsExactly("december", "");
        assertThat(
                shop.json("visit", "due", "--date", "2026-09-15", "--until", "2027-05-31").path("weeks").valueStream()
                        .flatMap(week -> week.path("visits").valueStream())
                        .filter(one -> List.of(OLD, next).contains(one.path("agreement").asString()))
                        .map(one -> one.path("agreement").asString() + " " + one.path("due").asString()))
                .containsExactly(OLD + " 2026-06-01", OLD + " 2026-09-01", next + " 2026-12-01", next + " 2027-03-01");
    }

    /** The new owner's paper says what it is the rest of; it renews itself as the old one would have. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void newOwner_getsHisAgreement_whichRenewsItself(Database database) throws IOException {
        BookShop shop = bakery(database, 1);
        String next = shop.json(transfer("--yes")).path("next").asString();

        String paper = text(shop.json("agreement", "print", next).path("files").get(0).asString());
        assertThat(paper).contains(
                "Rest of agreement A-2026-004, taken over from its former owner on September 15, 2026",
                "Marlow Cafe", "762.81", "226.78");
        assertThat(shop.json("agreement", "renewals").path("renewals").valueStream()
                .map(row -> row.path("agreement").asString())).contains(next).doesNotContain(OLD);
        JsonNode renewed = shop.json("agreement", "renew", next, "--agreed-by", "M. Marlow");
        assertThat(renewed.path("from").asString() + " " + renewed.path("until").asString() + " "
                + renewed.path("customer").asString()).isEqualTo("2027-06-01 2028-05-31 marlow-cafe");
    }

    /** What is wrong is said, and nothing is stored. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void wrongTransfer_isRefused(Database database) throws IOException {
        BookShop shop = bakery(database, 1);

        Map.of("--to nobody --on 2026-09-15", "to: there is no customer \"nobody\"",
                "--to crumb-lane-bakery --on 2026-09-15",
                "to: A-2026-004 is an agreement of crumb-lane-bakery already (another customer)",
                "--to marlow-cafe --on 2026-06-01", "from: 2026-06-01 is not within the term after its first day",
                "--to marlow-cafe --on 2027-01-02", "from: 2027-01-02 is still to come: today is 2026-12-30")
                .forEach((options, problem) -> assertThat(shop.problems(Stream
                        .concat(Stream.of("agreement", "transfer", OLD, "--yes"), Stream.of(options.split(" ")))
                        .toArray(String[]::new))).as(options).anyMatch(text -> text.contains(problem)));

        assertThat(show(shop, OLD).path("steps")).isEmpty();
        assertThat(shop.json("credit", "list").path("papers")).isEmpty();
        shop.json(transfer("--yes"));
        assertThat(shop.problems(transfer("--yes"))).singleElement().asString().contains("it went over to A-2026-",
                "on 2026-09-15 already");
    }

    private BookShop bakery(Database database, int... billed) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        for (int payment : billed) {
            shop.json("invoice", "issue", OLD, "--installment", String.valueOf(payment), "--date", "2026-09-01");
        }
        shop.json("customer", "add", "marlow-cafe", "--name", "Marlow Cafe", "--street", "7 Crumb Lane", "--city",
                "Alderton", "--region", "NY", "--postal-code", "10999", "--country", "US");
        return shop;
    }

    private static String[] transfer(String... more) {
        return Stream.concat(Stream.of("agreement", "transfer", OLD, "--to", "marlow-cafe", "--on", "2026-09-15"),
                Stream.of(more)).toArray(String[]::new);
    }

    private static JsonNode show(BookShop shop, String agreement) {
        return shop.json("agreement", "show", agreement);
    }

    private static List<String> texts(JsonNode all, String key) {
        return all.valueStream().map(one -> one.path(key).asString("")).toList();
    }

    /** What its payments come to, less what was given back of them. */
    private static BigDecimal kept(JsonNode agreement) {
        return agreement.path("payments").valueStream().map(payment -> new BigDecimal(payment.path("net").asString())
                .subtract(new BigDecimal(payment.path("givenBack").asString())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static List<String> due(BookShop shop, String until) {
        return shop.json("invoice", "due", "--until", until).path("installments").valueStream()
                .filter(one -> one.path("site").asString().equals("Crumb Lane Bakery")).map(one -> one.path("agreement")
                        .asString() + " " + one.path("number").asInt() + " " + one.path("net").asString())
                .toList();
    }

    private static void visit(BookShop shop, String id, String day, String work) throws IOException {
        shop.json("visit", "add", shop.write("visits/" + id + ".yaml", """
                format: 1
                form: visit
                id: %1$s
                site: crumb-lane-bakery
                people:
                  - {name: Ada Quill, grade: lead, arrived: %2$sT09:00, left: %2$sT10:00, on: %3$s}
                """.formatted(id, day, work)).toString());
    }

    private static String bill(BookShop shop, String what, String... more) throws IOException {
        return text(shop.json(Stream.concat(Stream.of("invoice", "issue", what, "--date", "2026-12-30"),
                Stream.of(more)).toArray(String[]::new)).path("papers").get(0).path("file").asString());
    }

    private static String text(String file) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(Path.of(file).toFile())) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }
}
