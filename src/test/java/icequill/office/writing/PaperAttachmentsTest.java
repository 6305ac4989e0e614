package icequill.office.writing;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.answer.WrittenPaper;
import icequill.document.Invoice;
import icequill.files.paper.PaperJson;
import icequill.problem.Problem;
import icequill.render.VeraPdf;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What papers carry within them, taken out again. */
@Tag("wide")
public class PaperAttachmentsTest {

    private static final Path VISIT = Path.of("visits/late-call.yaml");

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    @BeforeEach
    void shop() {
        folder = temporary.resolve("shop");
        DemoShop.files(folder);
    }

    @Test
    void invoice_salesTax_carriesTheUblThatIsWrittenBesideIt() throws Exception {
        WrittenPaper paper = invoice(new Extras(false, true, false));

        Map<String, String> files = files(paper);
        assertThat(paper.files()).extracting(file -> file.getFileName().toString())
                .containsExactly("draft-late-call.pdf", "draft-late-call.xml");
        assertThat(files).containsOnlyKeys("invoice.xml");
        assertThat(files.get("invoice.xml")).isEqualTo(Files.readString(paper.files().get(1)));
        assertThat(amount(files.get("invoice.xml"), "cbc:PayableAmount")).isEqualTo("301.13");
        assertStandards(paper);
    }

    /** By the shop's choice the data is CII, which makes the paper a hybrid invoice with metadata that say so. */
    @Test
    void invoice_salesTaxByEn16931_isAHybrid() throws Exception {
        change("shop.yaml", "paymentDays: 30", "paymentDays: 30\nsalesTaxEncoding: en16931");

        WrittenPaper paper = invoice(Extras.NONE);

        Map<String, String> files = files(paper);
        assertThat(files).containsOnlyKeys("factur-x.xml");
        assertThat(amount(files.get("factur-x.xml"), "ram:DuePayableAmount")).isEqualTo("301.13");
        assertThat(metadata(paper)).contains("<fx:DocumentFileName>factur-x.xml</fx:DocumentFileName>",
                "<fx:ConformanceLevel>EN 16931</fx:ConformanceLevel>");
        assertStandards(paper);
    }

    @Test
    void invoice_valueAddedTax_isAHybrid() throws Exception {
        change("shop.yaml", "paymentDays: 30", "paymentDays: 30\nvatId: DE123456789");
        change("sites/pennon-wharf-taproom.yaml", "taxPlace: alder-county", "taxPlace: hafenland");

        WrittenPaper paper = invoice(Extras.NONE);

        // 276.58 x 19 % = 52.5502
        assertThat(amount(files(paper).get("factur-x.xml"), "ram:GrandTotalAmount")).isEqualTo("329.13");
        assertStandards(paper);
    }

    /** Of several files all are written or none. */
    @Test
    void invoice_oneOfItsFilesCannotBeWritten_nothingIs() throws Exception {
        Files.createDirectories(folder.resolve("papers/draft-late-call.xml/kept"));

        List<Problem> problems = DemoShop.office(folder)
                .invoice(FormName.file(folder.resolve(VISIT)), options(new Extras(false, true, false)))
                .problems();

        assertThat(problems).isNotEmpty();
        assertThat(folder.resolve("papers/draft-late-call.xml/kept")).isDirectory();
        assertThat(folder.resolve("papers")).isDirectoryNotContaining("glob:**.pdf");
    }

    @Test
    void invoice_valueAddedTaxWithoutIdentifier_isAProblemThatSaysWhereToAddIt() throws Exception {
        change("sites/pennon-wharf-taproom.yaml", "taxPlace: alder-county", "taxPlace: hafenland");

        List<Problem> problems = DemoShop.office(folder)
                .invoice(FormName.file(folder.resolve(VISIT)), options(Extras.NONE)).problems();

        assertThat(problems).extracting(problem -> problem.place().path()).containsExactly("vatId");
        assertThat(folder.resolve("papers")).doesNotExist();
    }

    @Test
    void draft_carriesItsOwnData_whichReadsBack() throws Exception {
        WrittenPaper paper = DemoShop.office(folder).invoice(FormName.file(folder.resolve(VISIT)),
                new PaperOptions(Optional.empty(), LocalDate.of(2026, 5, 14), Optional.empty(), Extras.NONE))
                .orElseThrow();

        String json = files(paper).get("paper.json");
        assertThat(PaperJson.read(String.valueOf(json), "paper.json").orElseThrow())
                .isInstanceOfSatisfying(Invoice.class,
                        invoice -> assertThat(invoice.totals().gross()).isEqualTo(paper.sums().orElseThrow().gross()));
        assertStandards(paper);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-0114", ""})
    void paper_bare_carriesNothing(String number) throws Exception {
        WrittenPaper paper = DemoShop.office(folder).invoice(FormName.file(folder.resolve(VISIT)), new PaperOptions(
                Optional.of(number).filter(text -> !text.isEmpty()), LocalDate.of(2026, 5, 14), Optional.empty(),
                new Extras(false, false, true))).orElseThrow();

        assertThat(paper.name()).isEqualTo("draft-late-call");
        assertThat(files(paper)).isEmpty();
        assertStandards(paper);
    }

    /** What the owner alone may see stands in no file that leaves the shop. */
    @Test
    void enclosures_hold_noCostAndNoMargin() throws Exception {
        for (Path visit : DemoShop.files(folder, "visits")) {
            WrittenPaper paper = DemoShop.office(folder).invoice(FormName.file(visit),
                    new PaperOptions(Optional.empty(), LocalDate.of(2026, 5, 14), Optional.empty(), Extras.NONE))
                    .orElseThrow();
            assertThat(files(paper).get("paper.json")).doesNotContain("owner.", "\"cost\"", "wage", "markup",
                    "mileage");
        }
    }

    private WrittenPaper invoice(Extras extras) {
        return DemoShop.office(folder).invoice(FormName.file(folder.resolve(VISIT)), options(extras)).orElseThrow();
    }

    private static PaperOptions options(Extras extras) {
        return new PaperOptions(Optional.of("2026-0114"), LocalDate.of(2026, 5, 14), Optional.empty(), extras);
    }

    private void change(String file, String from, String to) throws Exception {
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(from);
        Files.writeString(folder.resolve(file), text.replace(from, to));
    }

    private static void assertStandards(WrittenPaper paper) throws Exception {
        for (String standard : VeraPdf.STANDARDS) {
            assertThat(VeraPdf.brokenRules(Files.readAllBytes(paper.files().getFirst()), standard)).as(standard)
                    .isEmpty();
        }
    }

    private static String amount(@Nullable String xml, String element) throws Exception {
        byte[] bytes = String.valueOf(xml).getBytes(StandardCharsets.UTF_8);
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(bytes))
                .getElementsByTagName(element).item(0).getTextContent();
    }

    private static String metadata(WrittenPaper paper) throws Exception {
        try (PDDocument document = Loader.loadPDF(paper.files().getFirst().toFile())) {
            return new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8);
        }
    }

    /** By name; each is also among the associated files of the document. */
    public static Map<String, String> files(WrittenPaper paper) throws Exception {
        try (PDDocument document = Loader.loadPDF(paper.files().getFirst().toFile())) {
            Map<String, String> files = new LinkedHashMap<>();
            var names = document.getDocumentCatalog().getNames();
            if (names == null || names.getEmbeddedFiles() == null) {
                return files;
            }
            for (PDComplexFileSpecification file : names.getEmbeddedFiles().getNames().values()) {
                files.put(file.getFilename(), new String(file.getEmbeddedFile().toByteArray(), StandardCharsets.UTF_8));
                assertThat(file.getCOSObject().getNameAsString("AFRelationship")).isIn("Alternative", "Data");
            }
            assertThat(document.getDocumentCatalog().getCOSObject().getCOSArray(COSName.getPDFName("AF")))
                    .hasSize(files.size());
            return files;
        }
    }
}
