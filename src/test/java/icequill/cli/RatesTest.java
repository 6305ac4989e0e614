package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * Rates in force: by themselves in a book of one office, on purpose where offices share one. The late call by hand: 52.00, 40 minutes of
 * 98.00 and 65 of 147.00 an hour come to 276.58, with 8.875 % of tax to 301.13; of 108.00 and 162.00 to 52.00 + 72.00 + 175.50 = 299.50, and
 * 326.08.
 */
@Tag("wide")
class RatesTest {

    private static final String LABOR = "pricing/labor.yaml";

    @TempDir
    private Path other;

    private static void raise(Path shop) throws IOException {
        replace(shop.resolve(LABOR), "standard: 98.00, after-hours: 147.00", "standard: 108.00, after-hours: 162.00");
    }

    private static void replace(Path file, String before, String after) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(before);
        Files.writeString(file, text.replace(before, after));
    }

    private static List<String> versions(BookShop shop) {
        List<String> told = new ArrayList<>();
        shop.json("rates", "list").path("versions").forEach(version -> told.add(version.path("papers").asInt()
                + (version.path("inForce").asBoolean() ? " in force" : "")));
        return told;
    }

    private static String inForce(BookShop shop) {
        return shop.json("rates", "show").path("rates").path("version").asString();
    }

    @Test
    void oneOffice_firstPaperByChangedRatesPutsThemIntoForce() throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        assertThat(shop.run("rates", "list").out()).contains("No rates are in force yet.");
        assertThat(shop.run("rates", "show").err()).contains("no rates are in force yet");
        assertThat(shop.issue("late-call", "2026-05-14").path("gross").asString()).isEqualTo("301.13");
        String first = inForce(shop);

        raise(shop.folder());
        assertThat(shop.run("price", "late-call").out()).contains("299.50");
        shop.json("visit", "add", shop.folder().resolve("visits/clock-change.yaml").toString());
        shop.json("invoice", "issue", "clock-change", "--date", "2026-11-02", "--dry-run");
        assertThat(inForce(shop)).as("what issues no paper").isEqualTo(first);
        shop.issue("clock-change", "2026-11-02");
        JsonNode second = shop.json("rates", "show");

        assertThat(versions(shop)).containsExactly("1 in force", "1");
        assertThat(shop.json("show", "INV-2026-00001").path("paper").path("origin").path("ratesVersion").asString())
                .isEqualTo(first);
        assertThat(shop.json("show", "INV-2026-00002").path("paper").path("origin").path("ratesVersion").asString())
                .isEqualTo(second.path("rates").path("version").asString());
        assertThat(second.path("before").asString()).isEqualTo(first);
        assertThat(shop.run("rates", "show").out()).contains("What is different from " + first, LABOR + ": changed",
                "grades[lead].hourly.standard: 98.00 -> 108.00", "grades[lead].hourly.after-hours: 147.00 -> 162.00",
                "Papers issued by it: 1");
        assertThat(shop.run("audit", "trail", second.path("rates").path("version").asString()).out())
                .contains("adopted");

        assertThat(shop.run("paper", "rework", "INV-2026-00001").out())
                .contains("INV-2026-00001 worked out again by version " + first + " of the rates: as issued");
        assertThat(shop.json("paper", "rework", "INV-2026-00002").path("same").asBoolean()).isTrue();
        assertThat(shop.run("rates", "export", first.substring(0, 6), other.resolve("then").toString()).status())
                .isZero();
        assertThat(other.resolve("then").resolve(LABOR)).content().contains("standard: 98.00");
        assertThat(shop.problems("rates", "export", first, other.resolve("then").toString())).hasSize(13).allSatisfy(
                problem -> assertThat(problem).contains("the file exists already"));
        assertThat(shop.run("rates", "show", "ffffffff").err())
                .contains("there is no version of the rates \"ffffffff\"");

        Files.copy(other.resolve("then").resolve(LABOR), shop.folder().resolve(LABOR),
                StandardCopyOption.REPLACE_EXISTING);
        shop.issue("found-nobody-bakery", "2026-11-03");
        assertThat(inForce(shop)).isEqualTo(first);
        assertThat(versions(shop)).containsExactly("2 in force", "1");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    @Test
    void offices_workByWhatOneOfThemAdopted() throws IOException {
        List<BookShop> offices = BookShop.offices(other);
        BookShop north = offices.getFirst();
        BookShop south = offices.getLast();
        raise(south.folder());
        north.json("visit", "add", north.folder().resolve("visits/late-call.yaml").toString());

        assertThat(north.problems("invoice", "issue", "late-call", "--date", "2026-05-14").getFirst())
                .contains("no rates are in force yet", "icequill rates adopt");
        Run first = north.run("rates", "adopt");
        assertThat(first.status()).isEqualTo(3);
        assertThat(first.out()).contains("the first");
        assertThat(first.err()).contains("nothing was adopted yet", "--yes");
        north.json("rates", "adopt", "--yes");
        assertThat(north.run("rates", "adopt").out()).contains("is in force already");

        Run priced = south.run("price", "late-call");
        assertThat(priced.out()).contains("276.58");
        assertThat(priced.err()).contains("Note: this folder is not as version " + inForce(north), LABOR,
                "icequill rates adopt");
        assertThat(north.run("price", "late-call").err()).isEmpty();
        JsonNode invoice = south.json("invoice", "issue", "late-call", "--date", "2026-05-14").path("papers").get(0);
        assertThat(invoice.path("number").asString()).isEqualTo("INV-south-2026-00001");
        assertThat(invoice.path("gross").asString()).isEqualTo("301.13");

        Run shown = south.run("rates", "adopt");
        assertThat(shown.status()).isEqualTo(3);
        assertThat(shown.out()).contains("Would adopt version", LABOR + ": changed",
                "grades[lead].hourly.standard: 98.00 -> 108.00");
        assertThat(versions(south)).containsExactly("1 in force");
        assertThat(south.run("rates", "adopt", "--yes").out()).contains("Adopted version");
        assertThat(north.run("price", "late-call").out()).contains("299.50");
        assertThat(south.run("rates", "list").out()).contains("(south)").contains("(north)");
        assertThat(versions(north)).containsExactly("0 in force", "1");
        assertThat(south.json("audit").path("findings")).isEmpty();
        assertThat(north.run("rates", "show", "--json").out()).doesNotContain("jdbc");
    }

    @Test
    void adopt_whatIsWrong_isToldAndNothingStored() throws IOException {
        BookShop shop = BookShop.empty(other.resolve("shop"), Database.POSTGRESQL);
        replace(shop.folder().resolve(LABOR), "standard: 98.00", "standard: -98.00");

        assertThat(shop.problems("rates", "adopt", "--yes")).allSatisfy(problem -> assertThat(problem).contains(LABOR));
        assertThat(shop.json("rates", "list").path("versions")).isEmpty();
    }

    /** The quote was made of a file that says 20 minutes more than the book: 120 of 98.00 an hour are 196.00, and 100 would be 163.33. */
    @Test
    void rework_ofWhatIsNotInTheBook_tellsWhereItDiffers() throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        Path file = shop.folder().resolve("quotes/float-switch.yaml");
        replace(file, "left: 2026-05-20T10:15", "left: 2026-05-20T11:00");
        shop.json("visit", "add", shop.folder().resolve("visits/late-call.yaml").toString());
        shop.json("quote", "issue", file.toString(), "--date", "2026-05-14");

        Run none = shop.run("paper", "rework", "RQ-2026-00001");

        assertThat(none.status()).isEqualTo(3);
        assertThat(none.out() + none.err()).contains("otherwise than issued");
        assertThat(none.out()).contains("196.00 -> 122.50");
    }

    /** Files are in the book too, so any office can make its folder of them anew. */
    @Test
    void papers_ofOneOffice_areCopiedByAnother() throws IOException {
        List<BookShop> offices = BookShop.offices(other);
        BookShop north = offices.getFirst();
        BookShop south = offices.getLast();
        north.json("rates", "adopt", "--yes");
        JsonNode issued = north.issue("late-call", "2026-05-14");
        byte[] paper = Files.readAllBytes(Path.of(issued.path("file").asString()));
        Path copy = south.folder().resolve("papers/issued/INV-north-2026/INV-north-2026-00001.pdf");
        assertThat(copy).doesNotExist();

        assertThat(south.run("paper", "reprint", "--all").out()).contains(
                "Copied from the book, byte for byte as issued",
                "1 made anew; all others are there.");
        assertThat(copy).hasBinaryContent(paper);
        assertThat(south.run("paper", "reprint", "--all").out()).contains("All papers are there as issued.");
        Files.writeString(copy, "forged");
        assertThat(south.problemsOfAudit()).singleElement().asString().contains("was changed after it was issued");
        assertThat(south.json("paper", "reprint", "INV-north-2026-00001").path("way").asString()).isEqualTo("copied");
        assertThat(copy).hasBinaryContent(paper);

        north.issue("clock-change", "2026-05-15");
        assertThat(south.json("audit").path("findings")).as("what was issued elsewhere since").isEmpty();
        assertThat(north.json("audit").path("findings")).isEmpty();
    }
}
