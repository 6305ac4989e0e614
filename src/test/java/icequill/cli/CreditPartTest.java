package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/**
 * A part of a line given back. A hotel paid 1,680.00 for a year, and 149.10 of tax at 8.875 %; from 15 August on it has one machine
 * less, worth 225.00 a year, for 290 of 365 days: 178.77, and 15.87 of tax.
 */
@Tag("wide")
class CreditPartTest {

    private static final String AGREEMENT = "agreements/hotel-fernhill.yaml";
    private static final String PAYMENT = "INV-2026-00001";

    @TempDir
    static Path common;

    /** With one invoice; nothing more is issued in it. */
    private static BookShop untouched;

    @TempDir
    private Path temporary;

    @BeforeAll
    static void issueOne() throws IOException {
        untouched = paid(common.resolve("shop"), Database.SQLITE);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void credit_ofWhatAChangeGivesBack_proposedTriedAndIssued(Database database) throws IOException {
        BookShop shop = paid(temporary.resolve("shop"), database);

        JsonNode proposed = shop.json("credit", "propose", PAYMENT, "--changes", AGREEMENT, "--date", "2026-08-20");
        assertThat(proposed.path("payment").asInt()).isEqualTo(1);
        assertThat(proposed.path("amount").asString()).isEqualTo("178.77");
        assertThat(shop.run("credit", "propose", PAYMENT, "--changes", AGREEMENT).out()).contains(
                "give back 178.77 of installment 1",
                "icequill credit issue INV-2026-00001 --amount 178.77");
        assertThat(credit(shop, "--amount", "178.77", "--dry-run").path("wouldIssue").get(0).path("gross").asString())
                .isEqualTo("-194.64");
        assertThat(shop.json("audit").path("papers").asInt()).isEqualTo(1);

        JsonNode part = credit(shop, "--amount", "178.77").path("papers").get(0);
        assertThat(part.path("gross").asString()).isEqualTo("-194.64");
        assertThat(text(part)).contains("Part of the 1,680.00 of the line", "7.15", "8.05", "0.67", "15.87", "194.64");
        assertThat(shop.json("credit", "propose", PAYMENT, "--changes", AGREEMENT).path("amount").asString())
                .isEqualTo("0.00");
        assertThat(shop.run("credit", "propose", PAYMENT, "--changes", AGREEMENT).out()).contains("0.00 is left")
                .doesNotContain("To give it back");
        assertThat(shop.json("agreement", "next", AGREEMENT).has("installment")).as("it is billed all the same")
                .isFalse();

        // 1,680.00 - 178.77 and 149.10 - 15.87: what is left of each authority's tax as well, or the audit would say so.
        JsonNode rest = credit(shop).path("papers").get(0);
        assertThat(rest.path("gross").asString()).isEqualTo("-1634.46");
        assertThat(text(rest)).contains("1,501.23", "133.23", "what is left of the line");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** A change gave all of the payment back: it is not asked for again, though no invoice of it stands. */
    @Test
    void nextPayment_wholePaymentGivenBackByAChange_isNotBilledAgain() throws IOException {
        BookShop shop = BookShop.in(temporary.resolve("shop"), Database.SQLITE);
        Path file = shop.folder().resolve(AGREEMENT);
        String text = Files.readString(file).replace("billing: monthly", "billing: quarterly")
                .replace("price: 1680.00", "price: 400.00").replace("from: 2026-08-15\n    add: [pool-bar]",
                        "from: 2026-06-15\n    remove: [floor-3, floor-6]\n    minutes: {full-clean: 180}");
        Files.writeString(file, text.substring(0, text.indexOf("changes:")));
        for (int payment = 1; payment <= 4; payment++) {
            shop.json("invoice", "issue", AGREEMENT, "--installment", String.valueOf(payment), "--date", "2026-12-01");
        }
        Files.writeString(file, text);
        // 2 x 225.00 x 351 / 365 = 432.74, more than the 400.00 that were asked for: all of each payment goes back.
        for (String invoice : new String[]{"INV-2026-00004", "INV-2026-00003"}) {
            assertThat(shop.json("credit", "propose", invoice, "--changes", AGREEMENT).path("amount").asString())
                    .isEqualTo("100.00");
            shop.json("credit", "issue", invoice, "--amount", "100", "--reason", "Two machines less.", "--date",
                    "2026-12-02");
        }

        assertThat(shop.json("agreement", "next", AGREEMENT).has("installment")).isFalse();
        assertThat(shop.problems("invoice", "issue", AGREEMENT, "--installment", "4", "--date", "2026-12-03"))
                .singleElement().asString().contains("nothing of installment 4 is left to be billed");
    }

    /**
     * A at 1,000.00 with tax of 8.875 %, B at 365.00 without: B leaves 70 days before the end of the year, 365.00 x 70 / 365 = 70.00,
     * all of it of B's line and none of it with tax. Goodwill on A's line is no part of it.
     */
    @Test
    void propose_siteThatLeaves_ofItsOwnLineAndTax() throws IOException {
        BookShop shop = BookShop.in(temporary.resolve("shop"), Database.SQLITE);
        String lantern = "agreements/lantern-coffee.yaml";
        Path file = shop.folder().resolve(lantern);
        String sites = """
                sites:
                  - {site: lantern-main-street, agreed: {price: 1000.00, from: an offer}}
                  - {site: lantern-ceniza, agreed: {price: 365.00, from: an offer}}
                """;
        String text = Files.readString(file).replaceFirst("(?s)changes:.*", "").replaceFirst("(?s)sites:.*(?=tier:)",
                sites).replace("billing: quarterly", "billing: yearly");
        Files.writeString(file, text);
        shop.json("invoice", "issue", lantern, "--installment", "1", "--date", "2026-06-01");
        Files.writeString(file, text.replace("{site: lantern-ceniza,", "{site: lantern-ceniza, until: 2027-03-22,"));
        credit(shop, "--lines", "1", "--amount", "10");

        assertThat(shop.run("credit", "propose", PAYMENT, "--changes", lantern).out()).contains(
                "give back 70.00 of installment 1 (INV-2026-00001), before tax; line 1: 0.00, 10.00 given back already,"
                        + " 0.00 left; line 2: 70.00, 0.00 given back already, 70.00 left.",
                "icequill credit issue INV-2026-00001 --lines 2 --amount 70.00");
        assertThat(shop.json("credit", "propose", PAYMENT, "--changes", lantern).path("amount").asString())
                .isEqualTo("70.00");
        assertThat(credit(shop, "--lines", "2", "--amount", "70.00").path("papers").get(0).path("gross").asString())
                .isEqualTo("-70.00");
        assertThat(shop.run("credit", "propose", PAYMENT, "--changes", lantern).out())
                .doesNotContain("To give it back");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "--amount 0 | 0 of line 1 cannot be given back (an amount before tax, above 0 and up to the 1680.00",
            "--amount -5 | -5 of line 1 cannot be given back",
            "--amount 1680.01 | 1680.01 of line 1 cannot be given back",
            "--amount 1.005 | 1.005 of line 1 cannot be given back", "--amount 5 --lines 2 | the invoice has no line 2",
            "--amount 5 --lines 0 | the invoice has no line 0",
            "--amount 5 --lines 1,2 | the invoice has no line 2",
            "--quantity 2 | line 1 has no price for one (an amount or a percentage of it)",
            "--percent 0.0001 | 0.0001 % of line 1 comes to nothing"})
    void credit_wrongAmount_saysWhatIsLeftAndTakesNoNumber(String flags, String message) throws IOException {
        assertThat(untouched
                .problems(("credit issue " + PAYMENT + " --reason x --date 2026-08-20 " + flags).split(" ", -1)))
                .singleElement().asString().contains(message);
        assertThat(untouched.json("audit").path("papers").asInt()).isEqualTo(1);
    }

    @Test
    void credit_amountBesideWhatItDoesNotGoWith_isRefused() throws IOException {
        BookShop shop = paid(temporary.resolve("shop"), Database.SQLITE);

        assertThat(shop.run("credit", "propose", PAYMENT, "--changes", AGREEMENT, "--amount", "5").err())
                .contains("Unknown options: '--amount', '5'");
        assertThat(shop.problems("credit", "propose", PAYMENT, "--changes", "agreements/crumb-lane-bakery.yaml"))
                .singleElement().asString().contains("INV-2026-00001 is no installment of A-2026-004");
        credit(shop, "--amount", "1680");
        assertThat(shop.problems("credit", "issue", PAYMENT, "--reason", "x", "--date", "2026-08-20", "--amount", "1"))
                .singleElement().asString().contains("every line has been credited already");
    }

    /**
     * 52.00, 40 minutes at 98.00/h and 65 at 147.00/h. Goodwill of 50.00 on the whole; a tenth of each, 27.66; ten of the minutes,
     * 16.33; and no more minutes than there are.
     */
    @Test
    void credit_goodwillPercentAndQuantity_eachWithItsTax() throws IOException {
        BookShop shop = BookShop.in(temporary.resolve("shop"), Database.SQLITE);
        shop.issue("late-call", "2026-05-20");

        JsonNode goodwill = credit(shop, "--amount", "50").path("papers").get(0);
        JsonNode tenth = credit(shop, "--percent", "10").path("papers").get(0);
        JsonNode minutes = credit(shop, "--lines", "2", "--quantity", "10").path("papers").get(0);

        assertThat(text(goodwill)).contains("9.40", "11.81", "28.79", "50.00",
                "Share of 50.00; by what is left of each line");
        assertThat(text(tenth)).contains("5.20", "6.53", "15.93", "27.66", "10% × 159.25");
        assertThat(text(minutes)).contains("16.33", "65.33 × 10", "÷ 40");
        assertThat(problem(shop, "--lines", "2", "--quantity", "31"))
                .contains("31 min of line 2 cannot be given back (above 0 and up to the 30 min that are left of it)");
        assertThat(problem(shop, "--lines", "2", "--quantity", "30"))
                .contains("30 min of line 2 come to 49.00 (more than 0.00 and at most the 30.66 that are left of it)");
        assertThat(problem(shop, "--percent", "80")).contains("80 % is more than what is left of the lines [1, 2, 3]");
        assertThat(problem(shop, "--amount", "182.60"))
                .contains("182.60 of the lines [1, 2, 3] cannot be given back",
                        "up to the 182.59 that are left of them");
        assertThat(shop.run("credit", "issue", PAYMENT, "--reason", "x", "--percent", "101").err())
                .contains("'101' is no percentage above 0 and up to 100");
        assertThat(shop.run("credit", "issue", PAYMENT, "--reason", "x", "--percent", "1", "--amount", "1").err())
                .contains("mutually exclusive");
        JsonNode rest = credit(shop).path("papers").get(0);
        assertThat(shop.json("show", PAYMENT).path("paper").path("credits")).hasSize(4);
        assertThat(text(rest)).contains("182.59");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    private static String problem(BookShop shop, String... more) {
        String[] line = Stream.concat(Stream.of("credit", "issue", PAYMENT, "--reason", "x", "--date", "2026-08-20"),
                Stream.of(more)).toArray(String[]::new);
        return shop.problems(line).toString();
    }

    /** Part of one line of several, which has to be named; on a Spanish paper. */
    @Test
    void credit_partOfALineOfAVisit_inSpanish() throws IOException {
        BookShop shop = BookShop.in(temporary.resolve("shop"), Database.SQLITE);
        shop.issue("holiday-call-mercado", "2026-09-20");

        assertThat(
                shop.problems("credit", "issue", PAYMENT, "--reason", "x", "--date", "2026-10-20", "--quantity", "1"))
                .singleElement().asString().contains("so many of one line, and these are the lines [1, 2");
        JsonNode part = shop.json("credit", "issue", PAYMENT, "--lines", "2", "--amount", "10", "--reason",
                "Llegamos tarde.", "--date", "2026-10-20").path("papers").get(0);
        assertThat(text(part)).contains("parte de los", "de la línea", "10.00");
        shop.json("credit", "issue", PAYMENT, "--lines", "2", "--reason", "Otra vez.", "--date", "2026-10-20");
        shop.json("credit", "issue", PAYMENT, "--reason", "Todo.", "--date", "2026-10-20");
        assertThat(shop.json("audit").path("findings")).isEmpty();
        assertThat(shop.json("show", PAYMENT).path("paper").path("credits")).hasSize(3);
    }

    private static BookShop paid(Path folder, Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        Path file = shop.folder().resolve(AGREEMENT);
        Files.writeString(file, Files.readString(file).replace("billing: monthly", "billing: yearly").replace(
                "from: 2026-08-15\n    add: [pool-bar]",
                "from: 2026-08-15\n    remove: [floor-6]\n    minutes: {full-clean: 180}"));
        shop.json("invoice", "issue", AGREEMENT, "--installment", "1", "--date", "2026-06-01");
        return shop;
    }

    private static JsonNode credit(BookShop shop, String... more) {
        String[] line = Stream.concat(
                Stream.of("credit", "issue", PAYMENT, "--reason", "One machine less.", "--date", "2026-08-20"),
                Stream.of(more)).toArray(String[]::new);
        return shop.json(line);
    }

    private static String text(JsonNode paper) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(Path.of(paper.path("file").asString()).toFile())) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }
}
