package icequill.render;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.document.Attachment;
import icequill.document.Paper;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.render.pdf.Html;
import icequill.render.pdf.SpokenText;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openpdf.text.Document;
import org.openpdf.text.Paragraph;
import org.openpdf.text.pdf.PdfWriter;

/** Papers held against PDF/A-3a and PDF/UA-1 by the reference validator, and read as a screen reader reads them. */
@Tag("wide")
class ArchiveTest {

    @TempDir
    Path shop;

    /** A kind of paper, by its place among those of the fixture, in one of the forms, a language and a size. */
    private record Trial(int kind, int form, Language language, PaperSize size) {
        List<Object> choices() {
            return List.of("kind " + kind, "form " + form, language, size);
        }

        /** One form of each kind, which take turns. */
        boolean isOfTheFirst() {
            return (2 * kind + form) % FORMS == 0;
        }
    }

    private static final int KINDS = 21;
    private static final int FORMS = 5;

    /** Every kind in every form; language and size take turns, at different paces, so that any two choices meet. */
    private static List<Trial> trials() {
        List<Language> languages = List.of(Language.ENGLISH, Language.SPANISH);
        List<PaperSize> sizes = List.of(PaperSize.values());
        List<Trial> trials = new ArrayList<>();
        for (int kind = 0; kind < KINDS; kind++) {
            for (int form = 0; form < FORMS; form++) {
                trials.add(new Trial(kind, form, languages.get((kind + form) % 2),
                        sizes.get((kind / 2 + form) % 2)));
            }
        }
        return trials;
    }

    @Test
    void trials_anyTwoOfKindFormLanguageSize_meet() {
        Set<Set<Object>> met = new HashSet<>();
        for (Trial trial : trials()) {
            for (Object one : trial.choices()) {
                trial.choices().stream().filter(other -> !other.equals(one))
                        .forEach(other -> met.add(Set.of(one, other)));
            }
        }
        int languages = 2;
        int sizes = PaperSize.values().length;

        assertThat(met).hasSize(KINDS * FORMS + (KINDS + FORMS) * (languages + sizes) + languages * sizes);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void pdf_shortLongWithPictureHugeName_isArchivableAndReadable(Language language) throws Exception {
        assertLasting(trials().stream().filter(Trial::isOfTheFirst).filter(trial -> trial.language().equals(language))
                .toList());
    }

    @Tag("long")
    @Test
    void pdf_anyTwoOfKindFormLanguageSize_isArchivableAndReadable() throws Exception {
        assertLasting(trials());
    }

    private void assertLasting(List<Trial> trials) throws Exception {
        ImageIO.write(new BufferedImage(300, 100, BufferedImage.TYPE_INT_ARGB), "png",
                shop.resolve("logo.png").toFile());
        for (Trial trial : trials) {
            InvoiceFixture plain = InvoiceFixture.of(trial.language(), trial.size(), "USD", "US");
            InvoiceFixture fixture = List.of(plain, plain.withLines(120), plain.withLogo("logo.png"),
                    plain.withCustomer("Quern & <Tabb> of the Very Old Town ".repeat(5).strip()),
                    plain.withCustomer("Լուսին ★ Bakery")).get(trial.form());
            List<Paper> papers = fixture.papers();
            assertThat(papers).hasSize(KINDS);
            Paper paper = papers.get(trial.kind());
            assertLasting(paper, paper.getClass().getSimpleName() + " of " + fixture);
        }
    }

    /** With an invoice as CII within, both lots of metadata that PDF/A does not know are declared side by side. */
    @Test
    void pdf_ofABooksPaper_namesThePaperBeforeAndIsArchivable() throws Exception {
        String previous = "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08";
        Paper paper = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").papers().getFirst();
        Printer printer = Printer.of(shop);
        for (String name : List.of("paper.json", Attachment.HYBRID)) {
            Attachment within = new Attachment(name, "application/json", "data", Attachment.Relation.DATA, "{}");
            byte[] pdf = printer.html(paper)
                    .then(html -> printer.pdf(paper, html, List.of(within), Map.of("Previous", previous)))
                    .orElseThrow();

            assertThat(new String(pdf, StandardCharsets.UTF_8))
                    .contains("<book:Previous>" + previous + "</book:Previous>");
            for (String standard : VeraPdf.STANDARDS) {
                assertThat(VeraPdf.brokenRules(pdf, standard)).as(standard + " " + name).isEmpty();
            }
        }
    }

    /** The judge finds what is wrong with a file made without care, by rule. */
    @Test
    void judge_carelessFile_failsByRule() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Document document = new Document();
        PdfWriter.getInstance(document, bytes);
        document.open();
        document.add(new Paragraph("careless"));
        document.close();

        assertThat(VeraPdf.brokenRules(bytes.toByteArray(), "3a")).contains("6.1.2-1", "6.2.11.4.1-1", "6.6.2.1-1");
        assertThat(VeraPdf.brokenByMachine(bytes.toByteArray())).contains("6.2-1", "7.2-34");
    }

    private void assertLasting(Paper paper, String what) throws Exception {
        byte[] pdf = pdf(paper);
        if (what.contains("lines=120")) {
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getNumberOfPages()).as(what).isGreaterThanOrEqualTo(3);
            }
        }
        for (String standard : VeraPdf.STANDARDS) {
            assertThat(VeraPdf.brokenRules(pdf, standard)).as(standard + " " + what).isEmpty();
        }
        Html html = Printer.of(shop).html(paper).orElseThrow();
        assertThat(SpokenText.of(pdf).text()).as(what).isEqualTo(SpokenText.written(html));
    }

    private byte[] pdf(Paper paper) {
        Printer printer = Printer.of(shop);
        return printer.html(paper).then(html -> printer.pdf(paper, html, List.of(), Map.of())).orElseThrow();
    }
}
