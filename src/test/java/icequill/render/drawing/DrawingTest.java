package icequill.render.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.problem.Validated;
import icequill.render.InvoiceFixture;
import icequill.render.Printer;
import icequill.render.pdf.Html;
import icequill.render.pdf.SpokenText;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/** Drawings of a page: what is read of them, where each mark lands on paper, and what is refused. */
class DrawingTest {

    private static final int POINTS_AN_INCH = 72;

    @TempDir
    Path shop;

    /** Printed in black, or read by somebody who does not tell colors apart, the kinds of sites still differ: by their outlines. */
    @Test
    void machines_withoutColors_differ() {
        assertThat(Stream
                .of(MachinesSketch.quietOne("x"), MachinesSketch.hatchedOne("x"), MachinesSketch.darkOne("x"))
                .map(DrawingTest::outlines)).doesNotHaveDuplicates().hasSize(3);
    }

    private static String outlines(Drawn drawing) {
        return String.valueOf(drawing.parts()).replaceAll("#[0-9a-f]{6}|none", "");
    }

    /** A drawing of 100 by 50 millimeters at the top left corner of the text; its halves are red and blue. */
    @Test
    void pdf_shapes_areWhereTheyAreDrawn() throws Exception {
        BufferedImage page = page("""
                <svg viewBox="0 0 100 50" style="display: block; width: 100mm; height: 50mm" aria-label="halves">
                <rect x="0" y="0" width="50" height="50" fill="#ff0000"/>
                <g fill="#0000ff" transform="translate(50 0)"><path d="M 0 0 H 50 V 50 L 0 50 Z"/></g>
                <circle cx="25" cy="25" r="10" fill="#00ff00"/>
                <line x1="50" y1="40" x2="100" y2="40" stroke="#ffffff" stroke-width="4"/>
                <polygon points="60,5 90,5 75,20" fill="none" stroke="#ffff00" stroke-width="3"/></svg>""");

        assertThat(at(page, 5, 5)).isEqualTo(0xff0000);
        assertThat(at(page, 25, 25)).isEqualTo(0x00ff00);
        assertThat(at(page, 36, 25)).isEqualTo(0xff0000);
        assertThat(at(page, 95, 30)).isEqualTo(0x0000ff);
        assertThat(at(page, 75, 40)).isEqualTo(0xffffff);
        assertThat(at(page, 75, 5)).isEqualTo(0xffff00);
        assertThat(at(page, 75, 10)).isEqualTo(0x0000ff);
        assertThat(at(page, 105, 25)).isEqualTo(0xffffff);
        assertThat(at(page, 50, 52)).isEqualTo(0xffffff);
    }

    /** Words stand upright, to the left or right of their point as they are anchored. */
    @Test
    void pdf_words_areUprightAndAnchored() throws Exception {
        byte[] pdf = pdf("""
                <svg viewBox="0 0 100 50" style="display: block; width: 100mm; height: 50mm" aria-label="words">
                <text x="50" y="10" font-size="5" text-anchor="end">left of it</text>
                <text x="50" y="20" font-size="5" font-weight="bold">right of it</text>
                <text x="50" y="30" font-size="5" text-anchor="middle">Երևան</text></svg>""").orElseThrow();
        BufferedImage page = render(pdf);

        assertThat(ink(page, 30, 6, 50, 11)).isPositive();
        assertThat(ink(page, 51, 6, 80, 11)).isZero();
        assertThat(ink(page, 51, 16, 80, 21)).isPositive();
        assertThat(ink(page, 20, 16, 49, 21)).isZero();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getPage(0).getResources().getFontNames()).hasSize(3);
        }
    }

    @Test
    void pdf_drawingInWords_isAFigure() throws Exception {
        byte[] pdf = pdf("""
                <svg viewBox="0 0 10 10" aria-label="a box"><rect width="10" height="10"/></svg>
                <svg viewBox="0 0 10 10"><rect width="10" height="10"/></svg>""").orElseThrow();

        assertThat(SpokenText.of(pdf).count("Figure")).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"<image href='x'/> | no element image",
            "<path d='M 0 0 A 1 1 0 0 0 2 2'/> | no path command A",
            "<path d='M 0 0 L 1'/> | path command L with [1.0]",
            "<rect width='10%' height='1'/> | numbers instead of \"10%\"",
            "<g transform='skewX(3)'/> | no transform \"skewX(3)\"",
            "<line x1='1 2'/> | one number instead of \"1 2\""})
    void pdf_whatIsNotDrawn_isAProblem(String mark, String message) {
        assertThat(pdf("<svg viewBox=\"0 0 10 10\" aria-label=\"x\">" + mark + "</svg>").problems()).singleElement()
                .satisfies(problem -> assertThat(problem.text()).contains(message, "rect, circle"));
    }

    @Test
    void read_withoutAView_isRefused() throws Exception {
        Element svg = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream("<svg viewBox='0 0 10'/>".getBytes(StandardCharsets.UTF_8)))
                .getDocumentElement();

        assertThatThrownBy(() -> DrawingReader.read(svg)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("viewBox");
    }

    private Validated<byte[]> pdf(String body) {
        return Printer.of(shop).pdf(InvoiceFixture.of(Language.ENGLISH, PaperSize.A4, "USD", "US").invoice(), new Html(
                "<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head><title>Test</title>"
                        + "<style type=\"text/css\">@page { size: 210mm 297mm; margin: 0 } "
                        + "body { margin: 0; font-family: Liberation Sans } svg { display: inline-block }</style></head><body>"
                        + body
                        + "<h1>Title</h1></body></html>"),
                List.of(), Map.of());
    }

    private BufferedImage page(String body) throws Exception {
        return render(pdf(body).orElseThrow());
    }

    private static BufferedImage render(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, POINTS_AN_INCH);
        }
    }

    private static int pixel(int millimeters) {
        return millimeters * POINTS_AN_INCH * 10 / 254;
    }

    private static int at(BufferedImage page, int x, int y) {
        return page.getRGB(pixel(x), pixel(y)) & 0xffffff;
    }

    private static int ink(BufferedImage page, int left, int top, int right, int bottom) {
        int dark = 0;
        for (int x = pixel(left); x < pixel(right); x++) {
            for (int y = pixel(top); y < pixel(bottom); y++) {
                dark += (page.getRGB(x, y) & 0xff) < 128 ? 1 : 0;
            }
        }
        return dark;
    }
}
