package icequill.render;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.document.Invoice;
import icequill.party.Language;
import icequill.party.PaperSize;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openpdf.text.Document;
import org.openpdf.text.Paragraph;
import org.openpdf.text.pdf.PdfWriter;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** Papers held against PDF/A-3b by the reference validator, veraPDF. */
class ArchiveTest {

    @TempDir
    Path shop;

    @BeforeAll
    static void judge() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void pdf_shortLongWithPictureHugeName_isArchivable(Language language) throws Exception {
        ImageIO.write(new BufferedImage(300, 100, BufferedImage.TYPE_INT_ARGB), "png",
                shop.resolve("logo.png").toFile());
        for (PaperSize size : PaperSize.values()) {
            InvoiceFixture plain = InvoiceFixture.of(language, size, "USD", "US");
            for (InvoiceFixture fixture : List.of(plain, plain.withLines(40), plain.withLogo("logo.png"),
                    plain.withCustomer("Crumb & <Crust> of the Very Old Town ".repeat(5).strip()))) {
                assertThat(failedRules(pdf(fixture.invoice()))).as(fixture.toString()).isEmpty();
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

        assertThat(failedRules(bytes.toByteArray())).contains("6.1.2-1", "6.2.11.4.1-1", "6.6.2.1-1");
    }

    @Test
    void pdf_printedAgainElsewhere_isTheSameBytes() {
        Invoice invoice = InvoiceFixture.of(Language.SPANISH, PaperSize.A4, "EUR", "ES").withLines(30).invoice();
        byte[] first = pdf(invoice);
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
            assertThat(Arrays.mismatch(pdf(invoice), first)).as("first differing byte").isEqualTo(-1);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    private byte[] pdf(Invoice invoice) {
        Printer printer = Printer.of(shop);
        return printer.html(invoice).then(html -> printer.pdf(invoice, html)).orElseThrow();
    }

    private static List<String> failedRules(byte[] pdf) throws Exception {
        PDFAFlavour flavour = PDFAFlavour.fromString("3b");
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .map(assertion -> assertion.getRuleId().getClause() + "-" + assertion.getRuleId().getTestNumber())
                    .distinct().sorted().toList();
        }
    }
}
