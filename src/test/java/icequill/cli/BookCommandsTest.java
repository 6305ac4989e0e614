package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
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
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** Recording, issuing, correcting, finding: the book as an office works with it. */
@Tag("wide")
class BookCommandsTest {

    @TempDir
    static Path common;

    /** With one invoice; nothing more is issued in it. */
    private static BookShop issued;

    @TempDir
    Path other;

    @BeforeAll
    static void issueOne() throws IOException {
        issued = BookShop.in(common.resolve("issued"), Database.SQLITE);
        issued.issue("late-call", "2026-05-14");
    }

    /** The late call comes to 276.58 and 24.55 of tax; its third line, the evening hours, to 159.25 and 14.13 (see CreditTest). */
    @ParameterizedTest
    @EnumSource(Database.class)
    void daysWork_onEitherDatabase_numbersPapersAndAudits(Database database) throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), database);

        JsonNode visit = shop.json("visit", "add", shop.folder().resolve("visits/late-call.yaml").toString());
        JsonNode invoice = shop.json("invoice", "issue", "late-call", "--date", "2026-05-14").path("papers").get(0);
        JsonNode first = shop.json("credit", "issue", "INV-2026-00001", "--lines", "3", "--reason", "No evening work.",
                "--date", "2026-06-01").path("papers").get(0);
        JsonNode rest = shop
                .json("credit", "issue", "INV-2026-00001", "--reason", "Charged twice.", "--date", "2026-06-02")
                .path("papers").get(0);
        JsonNode quote = shop.json("quote", "issue", "quotes/float-switch.yaml", "--date", "2026-05-14")
                .path("papers").get(0);

        assertThat(visit.path("gross").asString()).isEqualTo("301.13");
        assertThat(invoice.path("number").asString()).isEqualTo("INV-2026-00001");
        assertThat(invoice.path("gross").asString()).isEqualTo("301.13");
        assertThat(invoice.path("due").asString()).isEqualTo("2026-06-13");
        assertThat(Path.of(invoice.path("file").asString())).exists();
        assertThat(first.path("gross").asString()).isEqualTo("-173.38");
        assertThat(rest.path("gross").asString()).isEqualTo("-127.75");
        assertThat(rest.path("corrects").asString()).isEqualTo("INV-2026-00001");
        assertThat(quote.path("number").asString()).isEqualTo("RQ-2026-00001");
        assertThat(shop.problems("credit", "issue", "INV-2026-00001", "--reason", "Again.", "--date", "2026-06-03"))
                .singleElement().asString()
                .contains("every line has been credited already");
        assertThat(shop.json("find", "pennon", "wharf", "brewing").path("papers")).hasSize(4);
        assertThat(shop.json("find", "301.13").path("papers")).hasSize(1);
        assertThat(shop.json("find", "QD-500-0417").path("papers")).hasSize(2);
        JsonNode shown = shop.json("show", "INV-2026-00001").path("paper");
        assertThat(shown.path("credits")).hasSize(2);
        assertThat(shown.path("origin").path("visits").get(0).asString()).isEqualTo("late-call");
        JsonNode audit = shop.json("audit");
        assertThat(audit.path("papers").asInt()).isEqualTo(4);
        assertThat(audit.path("series")).hasSize(3);
        assertRestores(shop, audit);
    }

    /** From either database into a file of another shop. */
    private void assertRestores(BookShop shop, JsonNode audit) throws IOException {
        Path backup = other.resolve("backup.zip");
        assertThat(shop.json("backup", backup.toString()).path("series")).isEqualTo(audit.path("series"));
        assertThat(shop.problems("backup", backup.toString()).getFirst()).contains("the file exists already");
        BookShop second = BookShop.empty(other.resolve("second"), Database.SQLITE);

        assertThat(second.json("restore", backup.toString())).isEqualTo(audit);
        assertThat(second.json("audit")).isEqualTo(audit);
        assertThat(second.json("show", "CN-2026-00001").path("paper").path("origin").path("sha256"))
                .isEqualTo(shop.json("show", "CN-2026-00001").path("paper").path("origin").path("sha256"));
        assertThat(second.problems("restore", backup.toString()).getFirst()).contains("there is a book already");
    }

    @Test
    void visitAndIssue_wrongOrTwice_saysWhatToDo() throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        Path file = shop.folder().resolve("visits/late-call.yaml");

        assertThat(shop.run("visit", "add", file.toString()).out()).contains("Recorded late-call: Pennon Wharf Taproom",
                "Next: icequill invoice issue late-call");
        assertThat(shop.run("invoice", "issue", "lat-call").err()).contains("did you mean \"late-call\"?");
        assertThat(shop.run("invoice", "issue", "clock-change").err()).contains(
                "the book has no visit \"clock-change\"",
                "record it first: icequill visit add FILE");
        assertThat(shop.run("invoice", "issue", "survey-bakery").err()).contains("is only planned");
        Files.writeString(file, Files.readString(file).replace("limit: 400.00", "limit: 276.57"));
        assertThat(shop.json("visit", "add", file.toString()).path("visit").asString()).isEqualTo("late-call");
        assertThat(shop.run("invoice", "issue", "late-call").err()).contains("276.58, above the limit of 276.57");
        Files.writeString(file, Files.readString(file).replace("limit: 276.57", "limit: 400.00"));
        shop.json("visit", "add", file.toString());
        Run issued = shop.run("invoice", "issue", "--all", "--date", "2026-05-14");
        assertThat(issued.out()).contains("Issued invoice INV-2026-00001, USD 301.13, due 2026-06-13: ",
                "1 of 1 visits billed.");
        assertThat(shop.run("invoice", "issue", "late-call").err()).contains("was billed as INV-2026-00001",
                "icequill credit issue INV-2026-00001");
        Files.writeString(file, Files.readString(file).replace("limit: 400.00", "limit: 300.00"));
        assertThat(shop.problems("visit", "add", file.toString()).getFirst()).contains("was billed as INV-2026-00001");
        assertThat(shop.json("invoice", "issue", "--all").path("papers")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"keep, 2026-06-13", "restart, 2026-07-01"})
    void reissue_wrongOrderAndAddressee_sameAmountsNewPaper(String when, String due) throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        shop.issue("late-call", "2026-05-14");
        shop.json("customer", "add", "wharf-holdings", "--name", "Wharf Holdings", "--street", "1 Quay; Floor 3",
                "--city", "Port Ellery", "--region", "NY", "--postal-code", "10971", "--country", "US");

        JsonNode papers = shop
                .json("invoice", "reissue", "INV-2026-00001", "--purchase-order", "PO-NEW-9", "--bill-to",
                        "wharf-holdings", "--due", when, "--reason", "Wrong addressee.", "--date", "2026-06-01")
                .path("papers");

        assertThat(papers).hasSize(2);
        assertThat(papers.get(0).path("corrects").asString()).isEqualTo("INV-2026-00001");
        JsonNode invoice = papers.get(1);
        assertThat(invoice.path("number").asString()).isEqualTo("INV-2026-00002");
        assertThat(invoice.path("replaces").asString()).isEqualTo("INV-2026-00001");
        assertThat(invoice.path("due").asString()).isEqualTo(due);
        assertThat(invoice.path("gross").asString()).isEqualTo("301.13");
        assertThat(text(Path.of(invoice.path("file").asString())).replaceAll("\\h*\\R\\h*", " ")).contains(
                "Wharf Holdings", "Floor 3", "PO-NEW-9",
                "takes the place of invoice INV-2026-00001 of May 14, 2026");
        assertThat(shop.json("show", "INV-2026-00001").path("paper").path("origin").path("replacedBy").asString())
                .isEqualTo("INV-2026-00002");
        assertThat(shop.json("find", "PO-NEW-9").path("papers")).hasSize(1);
        assertThat(shop.run("invoice", "issue", "late-call").err()).contains("was billed as INV-2026-00002");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"invoice reissue # --reason x --due keep | nothing is to be different",
            "credit issue # --reason _ --lines 1 | no reason is given",
            "credit issue # --reason x --lines 9 | the invoice has no line 9 (a line from 1 to 3)",
            "credit issue # --reason x --lines 2,2 | line 2 is credited twice",
            "invoice reissue # --reason x --bill-to wharf --due keep | the book has no customer \"wharf\"",
            "credit issue # --reason x --date 2026-05-13 | dated 2026-05-13, but INV-2026-00001 bears 2026-05-14"})
    void credit_wrongWish_saysWhyAndNoNumberIsTaken(String flags, String message) throws IOException {
        String dated = flags.contains("--date") ? flags : flags + " --date 2026-06-01";
        String[] line = dated.replace("#", "INV-2026-00001").split(" ", -1);
        Arrays.setAll(line, i -> line[i].equals("_") ? "" : line[i]);

        assertThat(issued.problems(line)).anySatisfy(problem -> assertThat(problem).contains(message));
        assertThat(issued.json("audit").path("papers").asInt()).isEqualTo(1);
    }

    @Test
    void credit_withoutSayingWhenItIsDue_isWrongUsage() {
        Run run = issued.run("invoice", "reissue", "INV-2026-00001", "--purchase-order", "P", "--reason", "x");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("--due=WHEN");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--purchase-order PO-7", "--bill-to", "--due keep", "--due restart --purchase-order PO-7"})
    void credit_withWhatOnlyAReissueCanDo_isRefusedNotHalfObeyed(String flags) throws IOException {
        Run run = issued.run(("credit issue INV-2026-00001 --reason x " + flags).split(" ", -1));

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("Unknown option");
        assertThat(issued.json("audit").path("papers").asInt()).isEqualTo(1);
    }

    /** Payment 2 of the bakery's plan falls due on 2026-09-01. */
    @Test
    void payment_ofAnAgreement_billedOnceUntilItIsGivenBack() throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        String[] line = {"invoice", "issue", "agreements/crumb-lane-bakery.yaml", "--installment", "2",
                "--out-of-order", "--date",
                "2026-09-01"};

        assertThat(shop.json(line).path("papers").get(0).path("number").asString()).isEqualTo("INV-2026-00001");
        assertThat(shop.problems(line).getFirst()).contains("installment 2 of A-2026-004 was billed as INV-2026-00001");
        shop.json("credit", "issue", "INV-2026-00001", "--reason", "Agreement ended.", "--date", "2026-09-02");
        assertThat(shop.json(line).path("papers").get(0).path("number").asString()).isEqualTo("INV-2026-00002");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    @Test
    void reprint_fileGoneOrChanged_sameBytesFromTheBook() throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        Path file = Path.of(shop.issue("late-call", "2026-05-14").path("file").asString());
        byte[] issued = Files.readAllBytes(file);
        assertThat(shop.run("paper", "reprint", "INV-2026-00001").out()).contains("There, byte for byte as issued");

        Files.delete(file);
        assertThat(shop.problemsOfAudit()).anySatisfy(finding -> assertThat(finding).contains("INV-2026-00001"));
        JsonNode again = shop.json("paper", "reprint", "INV-2026-00001");

        assertThat(again.path("way").asString()).isEqualTo("printed");
        assertThat(Files.readAllBytes(file)).isEqualTo(issued);
        assertThat(shop.json("audit").path("findings")).isEmpty();

        Files.writeString(file, "forged");
        Path aside = Path.of(shop.json("paper", "reprint", "INV-2026-00001").path("aside").asString());
        assertThat(aside).hasContent("forged");
        assertThat(Files.readAllBytes(file)).isEqualTo(issued);

        Files.delete(file);
        Files.createDirectories(shop.folder().resolve("templates"));
        Files.writeString(shop.folder().resolve("templates/paper.css.ftl"),
                Files.readString(Path.of("templates/paper.css.ftl")) + "\nh1 { color: #333333; }\n");
        assertThat(shop.json("paper", "reprint", "INV-2026-00001").path("way").asString()).isEqualTo("printed");
        assertThat(Files.readAllBytes(file)).as("printed by the templates of then").isEqualTo(issued);
    }

    @Test
    void reprint_bareOrXml_copiesBesideWhatWasIssued() throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        Path file = Path.of(shop.issue("late-call", "2026-05-14").path("file").asString());
        byte[] issued = Files.readAllBytes(file);

        JsonNode files = shop.json("paper", "reprint", "INV-2026-00001", "--bare", "--xml").path("files");

        assertThat(files).hasSize(2);
        assertThat(Path.of(files.get(0).asString())).hasFileName("INV-2026-00001-bare.pdf");
        assertThat(Files.size(Path.of(files.get(0).asString()))).isLessThan(issued.length);
        assertThat(Files.readString(Path.of(files.get(1).asString()))).contains("INV-2026-00001");
        assertThat(Files.readAllBytes(file)).isEqualTo(issued);
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"INV-2026-00002, icequill find", "nonsense, icequill find", "7, icequill find"})
    void reprint_unknownNumber_saysHowToFindIt(String number, String hint) {
        assertThat(issued.problems("paper", "reprint", number).getFirst()).contains(
                "no paper \"" + number + "\" was issued",
                hint);
    }

    @Test
    void number_ofAnOffice_carriesItsMark() throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        Path yaml = shop.folder().resolve("shop.yaml");
        Files.writeString(yaml, Files.readString(yaml) + "\nbook: {office: north, retentionYears: 10}\n");

        assertThat(shop.issue("late-call", "2026-05-14").path("number").asString()).isEqualTo("INV-north-2026-00001");
        Files.writeString(yaml, Files.readString(yaml).replace("office: north", "office: North Street"));
        assertThat(shop.run("check").err()).contains("shop.yaml:", "this office's mark in paper numbers");
    }

    @ParameterizedTest
    @ValueSource(strings = {"invoice issue", "invoice issue late-call --all", "visit", "invoice", "export book.txt",
            "customer add"})
    void wrongUsage_saysSoAndEndsWithTwo(String line) {
        assertThat(Run.of(line.split(" ", -1)).status()).as(line).isEqualTo(2);
    }

    @Test
    void folder_thatIsNoShop_isAProblem() {
        Run run = Run.of("find", "anything", "--shop", other.toString(), "--json");

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.json().path("problems").get(0).path("code").asString()).isEqualTo("missing");
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }
}
