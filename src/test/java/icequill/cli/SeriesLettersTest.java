package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** A shop sets once what the numbers of its papers begin with. */
@Tag("wide")
class SeriesLettersTest {

    private static final String SPANISH = "{invoice: FAC, credit-note: NC, maintenance-quote: COT, repair-quote: COR}";
    private static final Clock NEXT_YEAR = Clock.fixed(Instant.parse("2027-01-11T17:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void papersOfEveryKind_bearThem_andAreFoundByThem(Database database) throws IOException {
        BookShop shop = BookShop.in(folder.resolve("shop"), database);
        set(shop, SPANISH);

        assertThat(number(shop.issue("late-call", "2026-05-14"))).isEqualTo("FAC-2026-00001");
        assertThat(number(shop.json("quote", "issue", "quotes/float-switch.yaml", "--date", "2026-05-14")))
                .isEqualTo("COR-2026-00001");
        assertThat(shop.json("invoice", "reissue", "FAC-2026-00001", "--purchase-order", "PO-9", "--due", "keep",
                "--reason", "Wrong order.", "--date", "2026-05-20").toString())
                .contains("NC-2026-00001", "FAC-2026-00002");

        for (String typed : List.of("FAC-2026-00002", "fac-2026-2", "fac 2026/2", "2026-2", "2")) {
            assertThat(shop.json("show", typed).path("paper").path("issued").path("number").asString()).as(typed)
                    .isEqualTo("FAC-2026-00002");
        }
        assertThat(shop.json("find", "nc-2026-00001").path("papers")).hasSize(1);
        Path pdf = shop.folder().resolve("papers/issued/FAC-2026/FAC-2026-00001.pdf");
        assertThat(pdf).exists();
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** So that a year's numbers have no gap, and no two beginnings. */
    @ParameterizedTest
    @EnumSource
    void seriesThatHasBegun_keepsItsLetters_andTheNextYearsHasTheNewOnes(Database database) throws IOException {
        BookShop shop = BookShop.in(folder.resolve("shop"), database);
        assertThat(number(shop.issue("late-call", "2026-05-14"))).isEqualTo("INV-2026-00001");

        set(shop, SPANISH);

        assertThat(number(shop.issue("ten-minute-brushing", "2026-05-15"))).isEqualTo("INV-2026-00002");
        assertThat(number(shop.json("quote", "issue", "quotes/float-switch.yaml", "--date", "2026-05-15")))
                .isEqualTo("COR-2026-00001");
        shop.json("visit", "add", shop.folder().resolve("visits/goodwill-clinic.yaml").toString());
        Run next = shop.runAt(NEXT_YEAR, "invoice", "issue", "goodwill-clinic", "--date", "2027-01-08", "--json");
        assertThat(next.status()).as(next.out() + next.err()).isZero();
        assertThat(number(next.json())).isEqualTo("FAC-2027-00001");
        assertThat(shop.json("show", "INV-2026-1").path("paper").path("issued").path("number").asString())
                .isEqualTo("INV-2026-00001");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** The settings may have changed since: the kind stands in the papers. */
    @ParameterizedTest
    @EnumSource
    void lostBook_isMadeAgainFromPapersWithLettersOfTheirOwn(Database database) throws IOException {
        BookShop shop = BookShop.in(folder.resolve("shop"), database);
        set(shop, "{invoice: CN, credit-note: INV}");
        shop.issue("late-call", "2026-05-14");
        shop.json("credit", "issue", "CN-2026-00001", "--reason", "Charged twice.", "--date", "2026-05-20");
        JsonNode before = shop.json("audit").path("series");
        Path backup = shop.folder().resolve("backup.zip");
        shop.json("backup", backup.toString());
        BookShop again = BookShop.empty(folder.resolve("again"), database);
        copy(shop.folder().resolve("papers"), again.folder().resolve("papers"));

        Run restored = again.run("restore", "--from-papers", "--json");

        assertThat(restored.json().path("papers").asInt()).as(restored.out() + restored.err()).isEqualTo(2);
        assertThat(again.json("audit").path("series")).isEqualTo(before);
        assertThat(again.json("show", "CN-2026-00001").path("paper").path("issued").path("kind").asString())
                .isEqualTo("invoice");
        BookShop third = BookShop.empty(folder.resolve("third"), database);
        third.json("restore", backup.toString());
        assertThat(third.json("audit").path("series")).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
            "{invoice: \"\"} | book.letters.invoice | one to six of the capital letters A to Z",
            "{invoice: FACTURA} | book.letters.invoice | one to six of the capital letters A to Z",
            "{invoice: F/A} | book.letters.invoice | one to six of the capital letters A to Z",
            "{invoice: \"C:\"} | book.letters.invoice | one to six of the capital letters A to Z",
            "{invoice: fac} | book.letters.invoice | one to six of the capital letters A to Z",
            "{invoice: 12} | book.letters.invoice | one to six of the capital letters A to Z",
            "{invoce: FAC} | book.letters.invoce | invoice",
            "FAC | book.letters | ",
            "{invoice: CN} | book.letters | CN are the letters of invoice and of credit-note",
            "{invoice: COT, repair-quote: COT} | book.letters | COT are the letters of invoice and of repair-quote",
            "{invoice: NORTH} | book.letters | NORTH are the letters of invoice and the mark of this office"})
    void lettersThatCannotBe_areOneClearReport(String letters, String path, String says) throws IOException {
        BookShop shop = BookShop.in(folder.resolve("shop"), Database.SQLITE);
        set(shop, letters + "\n  office: north");

        assertThat(shop.problems("customer", "list")).singleElement().asString().startsWith("shop.yaml:")
                .contains(": " + path + ": ").contains(says == null ? "" : says);
        assertThat(shop.problems("check")).anySatisfy(problem -> assertThat(problem).contains(path));
    }

    /** What shop.yaml cannot know: the letters of the year's series, and the other offices. */
    @Test
    void lettersThatAreTaken_areAProblem() throws IOException {
        List<BookShop> offices = BookShop.offices(folder);
        BookShop north = offices.getFirst();
        north.json("rates", "adopt", "--yes");
        north.issue("late-call", "2026-05-14");
        set(north, "{credit-note: INV, invoice: FAC, repair-quote: NORD}");
        assertThat(north.problems("credit", "issue", "INV-north-2026-00001", "--reason", "Charged twice.", "--date",
                "2026-05-20")).singleElement().asString().contains(
                        "numbers of the kind invoice begin with INV in 2026 already (other letters for credit-note (book: letters: in shop.yaml))");

        BookShop south = offices.getLast();
        set(south, "{invoice: NORTH}");
        south.json("visit", "add", south.folder().resolve("visits/ten-minute-brushing.yaml").toString());
        assertThat(south.problems("invoice", "issue", "ten-minute-brushing", "--date", "2026-05-20")).singleElement()
                .asString()
                .contains("the letters NORTH are the mark of the office north (other letters for invoice");
        assertThat(north.json("audit").path("findings")).isEmpty();
    }

    private static void set(BookShop shop, String letters) throws IOException {
        Path file = shop.folder().resolve("shop.yaml");
        String text = Files.readString(file);
        String line = "book:\n  letters: " + letters + "\n";
        Files.writeString(file, text.contains("book:\n") ? text.replace("book:\n", line) : text + line);
    }

    private static String number(JsonNode answer) {
        JsonNode papers = answer.path("papers");
        return (papers.isEmpty() ? answer : papers.get(0)).path("number").asString();
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            files.forEach(file -> {
                try {
                    Files.copy(file, to.resolve(from.relativize(file)));
                } catch (IOException failed) {
                    throw new UncheckedIOException(failed);
                }
            });
        }
    }
}
