package icequill.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.document.BrushingSheet;
import icequill.document.BrushingSheetPair;
import icequill.document.CombinedInvoice;
import icequill.document.ComparisonSheet;
import icequill.document.CreditNote;
import icequill.document.FitSheet;
import icequill.document.InstallmentInvoice;
import icequill.document.Invoice;
import icequill.document.MaintenanceQuote;
import icequill.document.OwnersOutlook;
import icequill.document.Paper;
import icequill.document.RefrigerantRecord;
import icequill.document.Reminder;
import icequill.document.RenewalNotice;
import icequill.document.RepairQuote;
import icequill.document.ServiceAgreement;
import icequill.document.StageInvoice;
import icequill.document.Statement;
import icequill.document.VisitAnnouncement;
import icequill.document.VisitRecord;
import icequill.document.WorkSheet;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.render.pdf.Html;
import icequill.render.words.Fonts;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PrinterTest {

    /** Set to true on the command line ({@code -Dgolden.write=true}) to write the golden files anew; then read their diff. */
    private static final boolean WRITE = Boolean.getBoolean("golden.write");

    /** The same on every paper; how it looks shows in the pages' text and in the tests below. */
    private static final Pattern STYLE = Pattern.compile("<style.*</style>", Pattern.DOTALL);

    @TempDir
    Path shop;

    /** Each kind of paper as most shops print it, and once in Spanish; between them every size, currency and country. */
    static Stream<Arguments> papers() {
        InvoiceFixture plain = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US");
        List<Arguments> all = new ArrayList<>();
        for (int index = 0; index < plain.papers().size(); index++) {
            all.add(Arguments.of(index, Language.ENGLISH, PaperSize.LETTER, "USD", "US"));
            Place place = ABROAD.get(index % ABROAD.size());
            all.add(Arguments.of(index, Language.SPANISH, place.size(), place.currency(), place.country()));
        }
        // Bills in English too where the law asks for other words, or the money has no cents or three decimals.
        for (int index = 0; index < 2; index++) {
            all.add(Arguments.of(index, Language.ENGLISH, PaperSize.A4, "EUR", "DE"));
            all.add(Arguments.of(index, Language.ENGLISH, PaperSize.A4, "JPY", "JP"));
            all.add(Arguments.of(index, Language.ENGLISH, PaperSize.A4, "KWD", "KW"));
        }
        // A language that only a file of words knows of.
        all.add(Arguments.of(0, new Language("de"), PaperSize.A4, "EUR", "DE"));
        return all.stream();
    }

    private record Place(PaperSize size, String currency, String country) {}

    private static final List<Place> ABROAD = List.of(new Place(PaperSize.A4, "EUR", "ES"),
            new Place(PaperSize.LETTER, "USD", "MX"), new Place(PaperSize.A4, "EUR", "DE"),
            new Place(PaperSize.A4, "JPY", "JP"), new Place(PaperSize.A4, "KWD", "KW"),
            new Place(PaperSize.LETTER, "USD", "US"), new Place(PaperSize.A4, "USD", "GB"));

    @ParameterizedTest(name = "paper {0} {1} {2} in {3}")
    @MethodSource("papers")
    void paper_languageSizeCurrencyCountry_matchesGolden(int index, Language language, PaperSize size, String currency,
            String country) throws IOException {
        Paper paper = InvoiceFixture.of(language, size, currency, country).papers().get(index);
        assertGolden(paper, kind(paper) + "-" + language.tag() + "-" + size.name().toLowerCase(Locale.ROOT) + "-"
                + currency + "-" + country);
    }

    private static String kind(Paper paper) {
        return switch (paper) {
        case Invoice invoice -> "invoice";
        case CreditNote credit -> "credit";
        case RepairQuote quote -> "repair-quote";
        case VisitRecord visit -> "record";
        case RefrigerantRecord record -> "refrigerant";
        case VisitAnnouncement visit -> "announcement";
        case WorkSheet sheet -> "worksheet";
        case BrushingSheet sheet -> "brushing";
        case MaintenanceQuote quote -> "maintenance-quote";
        case ServiceAgreement agreement -> "agreement";
        case CombinedInvoice invoice -> "combined";
        case InstallmentInvoice invoice -> "installment";
        case StageInvoice invoice -> "stage";
        case RenewalNotice notice -> "renewal";
        case ComparisonSheet sheet -> sheet.outlook().isPresent() ? "outlook" : "comparison";
        case BrushingSheetPair pair -> "brushing-pair";
        case FitSheet sheet -> "fit";
        case OwnersOutlook page -> "owners";
        case Statement statement -> "statement";
        case Reminder reminder -> "reminder";
        };
    }

    private void assertGolden(Paper paper, String name) throws IOException {
        Printer printer = Printer.of(shop);
        Html html = printer.html(paper).orElseThrow();
        byte[] pdf = printer.pdf(paper, html, List.of(), Map.of()).orElseThrow();
        assertGolden(name + ".html", STYLE.matcher(html.text()).replaceFirst("<style>...</style>"));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            float width = document.getPage(0).getMediaBox().getWidth();
            assertThat(width).isCloseTo(paper.size() == PaperSize.A4 ? 595.3f : 612f, within(0.5f));
            assertGolden(name + ".txt",
                    document.getNumberOfPages() + " page(s)\n" + new PDFTextStripper().getText(document));
        }
    }

    private static void assertGolden(String name, String text) throws IOException {
        Path file = Path.of("src/test/resources/golden", name);
        if (WRITE) {
            Files.writeString(file, text);
        }
        assertThat(text).isEqualTo(Files.readString(file));
    }

    @Test
    void invoice_fortyLines_headsRepeatAndNoLineIsLost() throws IOException {
        Invoice invoice = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").withLines(40).invoice();

        List<String> pages = PaperPages.of(pdf(invoice));

        assertThat(pages.size()).isBetween(2, 4);
        assertThat(String.join("", pages).split("Descaler", -1)).hasSize(42);
        assertThat(pages.get(1)).contains("What, and how it was figured", "Page 2 of " + pages.size(),
                "Invoice 2026-0114");
    }

    /** However the lines fall, the page that bears the sums bears the last line too, and the notes below. */
    @ParameterizedTest(name = "{0} lines")
    @ValueSource(ints = {2, 5, 6, 7, 8, 9, 10, 11, 12, 30})
    void invoice_anyCountOfLines_sumsStandWithTheLastLineAndTheNotes(int lines) throws IOException {
        Invoice invoice = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").withLines(lines).invoice();

        List<String> withSums = PaperPages.of(pdf(invoice)).stream().map(page -> page.replaceAll("\\s+", " "))
                .filter(page -> page.contains("Total before tax")).toList();

        assertThat(withSums).hasSize(1);
        assertThat(withSums.getFirst()).contains("Under warranty", "Total due (USD)", "Your limit for this visit");
    }

    @Test
    void invoice_draft_saysSoAndAsksForNothing() {
        Invoice invoice = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").asDraft().invoice();

        String html = Printer.of(shop).html(invoice).orElseThrow().text();

        assertThat(html).contains("<h1>Draft invoice</h1>", "Do not pay.", "1,404.00").doesNotContain("Please pay by",
                "Total due", "2026-0114");
    }

    @Test
    void invoice_nothingDue_saysSoAndGivesNoAccount() {
        Invoice invoice = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").withLines(1).invoice();

        String html = Printer.of(shop).html(invoice).orElseThrow().text();

        assertThat(html).contains("USD\u00a00.00", "Nothing to pay").doesNotContain("Please pay by", "Pay to",
                "bank details");
    }

    @Test
    void invoice_totalDue_inTheFirstHalfOfPageOne() throws IOException {
        Invoice invoice = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").invoice();
        float[] lowest = {0};
        try (PDDocument document = Loader.loadPDF(pdf(invoice))) {
            PDFTextStripper finder = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    if (text.contains("1,404.00") && lowest[0] == 0) {
                        lowest[0] = positions.getFirst().getYDirAdj();
                    }
                }
            };
            finder.setEndPage(1);
            finder.getText(document);
        }

        assertThat(lowest[0]).isBetween(1f, 396f);
    }

    @Test
    void invoice_hugeName_staysWithinThePage() throws IOException {
        Invoice invoice = InvoiceFixture.of(Language.SPANISH, PaperSize.A4, "EUR", "ES")
                .withCustomer("Panadería y Confitería de la Muy Antigua Plaza Mayor ".repeat(3).strip()).invoice();

        try (PDDocument document = Loader.loadPDF(pdf(invoice))) {
            PDFTextStripper margins = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    assertThat(positions.getLast().getEndX()).isLessThanOrEqualTo(595f - 40f);
                }
            };
            assertThat(margins.getText(document)).isNotNull();
        }
    }

    @ParameterizedTest(name = "{0} x {1}")
    @CsvSource({"300, 100", "9000, 500", "40, 4000"})
    void invoice_logo_transparentOrHuge_isSet(int width, int height) throws IOException {
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB), "png",
                shop.resolve("logo.png").toFile());
        Invoice invoice = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").withLogo("logo.png")
                .invoice();

        byte[] pdf = pdf(invoice);

        assertThat(PaperPages.of(pdf)).hasSizeLessThanOrEqualTo(2);
        assertThat(pdf.length).isLessThan(400_000);
        // The page can be sent or opened anywhere: its picture is in it.
        assertThat(Printer.of(shop).html(invoice).orElseThrow().text())
                .startsWith("<!DOCTYPE html>").contains("src=\"data:image/png;base64,", "<meta charset=\"utf-8\"/>")
                .doesNotContain("logo.png");
    }

    @ParameterizedTest
    @ValueSource(strings = {"missing.png", "text.png"})
    void invoice_logoThatIsNoPicture_isAProblem(String name) throws IOException {
        Files.writeString(shop.resolve("text.png"), "not a picture");
        Invoice invoice = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").withLogo(name).invoice();

        List<Problem> problems = Printer.of(shop).html(invoice).problems();

        assertThat(problems).extracting(Problem::code).containsExactly(Code.NOT_ALLOWED);
        assertThat(problems.getFirst().message()).contains(name);
    }

    @Test
    void invoice_markupInTexts_isEscaped() {
        Invoice invoice = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US")
                .withCustomer("<script>alert('x')</script> & \"sons\"").invoice();

        String html = Printer.of(shop).html(invoice).orElseThrow().text();

        assertThat(html).doesNotContain("<script>").contains("&lt;script&gt;", "&amp;", "No &lt;ice&gt;.");
        String style = html.substring(html.indexOf("<style"), html.indexOf("</style>"));
        assertThat(style).contains("Frost \\26  Daughters").doesNotContain("&");
    }

    @Test
    void invoice_shopsOwnTemplate_takesThePlaceOfOurs() throws IOException {
        template("invoice.ftlh", "<html><head><title>t</title></head><body><p>Own ${billTo.name}</p></body></html>");

        assertThat(Printer.of(shop).html(plain()).orElseThrow().text()).contains("Own Quern &amp; Tabb");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"line one\\n<#if x | 2", "a\\nb\\n${nothing} | 3", "${title?foo} | 1"})
    void invoice_brokenTemplate_saysFileAndLineAndWhatToDo(String text, int line) throws IOException {
        template("invoice.ftlh", text.replace("\\n", "\n"));

        List<Problem> problems = Printer.of(shop).html(plain()).problems();

        assertThat(problems).extracting(Problem::code).containsExactly(Code.TEMPLATE);
        assertThat(problems.getFirst().place().reference()).isEqualTo("templates/invoice.ftlh:" + line);
        assertThat(problems.getFirst().allowed()).contains("mend the line");
    }

    /** What a template must not reach: classes, methods of objects, files outside its folder. */
    @ParameterizedTest
    @ValueSource(strings = {"${\"freemarker.template.utility.Execute\"?new()(\"id\")}", "${title?api.getClass()}",
            "${title.class}", "<#include \"../shop.yaml\">", "<#include \"/etc/passwd\">",
            "<#import \"file:///etc/passwd\" as x>", "${statics}"})
    void invoice_templateReachingOut_isRefused(String attack) throws IOException {
        Files.writeString(shop.resolve("shop.yaml"), "secret");
        template("invoice.ftlh", "<html><body><p>" + attack + "</p></body></html>");

        assertThat(Printer.of(shop).html(plain()).problems()).extracting(Problem::code).containsExactly(Code.TEMPLATE);
    }

    /** What a page must not reach: only pictures in the shop folder, by bare name. */
    @ParameterizedTest
    @ValueSource(strings = {"<img src=\"file:///etc/hostname\" alt=\"x\"/>",
            "<img src=\"http://127.0.0.1:1/x.png\" alt=\"x\"/>",
            "<img src=\"../shop.png\" alt=\"x\"/>", "<img src=\"/etc/x.png\" alt=\"x\"/>",
            "<div style=\"background-image: url(file:///etc/x.png)\">x</div>"})
    void pdf_pageReachingOut_isRefused(String attack) throws IOException {
        template("invoice.ftlh",
                "<html><head><title>t</title><style>body, div { font-family: \"Liberation Sans\" }</style>"
                        + "</head><body>" + attack + "</body></html>");
        Printer printer = Printer.of(shop);

        List<Problem> problems = printer.html(plain()).then(html -> printer.pdf(plain(), html, List.of(), Map.of()))
                .problems();

        assertThat(problems).extracting(Problem::code).containsExactly(Code.TEMPLATE);
        assertThat(problems.getFirst().message()).contains("asks for");
    }

    /** Never a silent box: also what only a template says is found. */
    @Test
    void pdf_characterThatNoFontHas_isAProblem() throws IOException {
        template("invoice.ftlh", "<html><head><title>t</title></head><body><p>ice is 🧊</p></body></html>");
        Printer printer = Printer.of(shop);

        List<Problem> problems = printer.html(plain()).then(html -> printer.pdf(plain(), html, List.of(), Map.of()))
                .problems();

        assertThat(problems).extracting(Problem::code).containsExactly(Code.NO_GLYPH);
        assertThat(problems.getFirst().message()).isEqualTo("our fonts cannot draw U+01F9CA (🧊)");
    }

    @Test
    void pdf_documentTypeOrEntity_isRefused() {
        Html page = new Html(
                "<!DOCTYPE html [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><html><body>&x;</body></html>");

        assertThat(Printer.of(shop).pdf(plain(), page, List.of(), Map.of()).problems()).extracting(Problem::code)
                .containsExactly(Code.TEMPLATE);
    }

    /** Papers printed at the same time by several threads are the papers printed one after the other. */
    @Test
    void pdf_manyThreads_eachPaperWhole() {
        List<Integer> counts = List.of(2, 5, 9, 14, 20, 27, 3, 8);

        List<List<String>> together = counts.parallelStream().map(this::text).toList();

        assertThat(together).isEqualTo(counts.stream().map(this::text).toList());
    }

    private List<String> text(int lines) {
        try {
            return PaperPages.of(
                    pdf(InvoiceFixture.of(Language.SPANISH, PaperSize.A4, "EUR", "ES").withLines(lines).invoice()));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Test
    void words_allLanguages_haveEqualKeys() throws IOException {
        assertThat(keys("es")).isEqualTo(keys("en"));
    }

    private static Set<String> keys(String language) throws IOException {
        Properties words = new Properties();
        try (Reader file = Files.newBufferedReader(Path.of("templates/words", language + ".properties"))) {
            words.load(file);
        }
        return new TreeSet<>(words.stringPropertyNames());
    }

    /** Every phrase and word key that the sources mention has words. */
    @Test
    void words_everyKeyInTheSources_isThere() throws IOException {
        Pattern key = Pattern
                .compile(
                        "\"((?:line|reason|remark|tax|owner|discount|fact|visit|machine|total|invoice|table|pay|note|credit|quote|approval|attachment|head|record|sheet|timetable|caution|state|measure|brushing|plan|choice|calls|catch-up|agreement|billing|renewal|compare|outlook|answer|account|ageing|statement|reminder|mine|fit)[.][a-z.-]*[a-z])\"");
        TreeSet<String> used = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
                key.matcher(Files.readString(file)).results().forEach(found -> used.add(found.group(1)));
            }
        }
        used.removeAll(Set.of("invoice.ftlh", "invoice.xml", "statement.ftlh", "reminder.ftlh", "account.schema.json",
                "calls.minutes", "calls.on"));
        assertThat(used).hasSizeGreaterThan(60);
        assertThat(keys("en")).containsAll(used);
    }

    @Test
    void missing_characters_namedOnce() {
        assertThat(Fonts.missing("Crème brûlée, Łódź, Ωμέγα, Москва – 4 °C × ½")).isEmpty();
        assertThat(Fonts.missing("Երևան, ⚠ → ✓, ☎")).as("in the second font").isEmpty();
        assertThat(Fonts.missing("🧊 and 🧊")).containsExactly(0x1F9CA);
        assertThat(Fonts.missing("ߒߞߏ")).as("from right to left, in no font").hasSize(3);
    }

    private Invoice plain() {
        return InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").invoice();
    }

    private byte[] pdf(Invoice invoice) {
        Printer printer = Printer.of(shop);
        return printer.html(invoice).then(html -> printer.pdf(invoice, html, List.of(), Map.of())).orElseThrow();
    }

    private void template(String name, String text) throws IOException {
        Files.createDirectories(shop.resolve("templates"));
        Files.writeString(shop.resolve("templates").resolve(name), text);
    }
}
