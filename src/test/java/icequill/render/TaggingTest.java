package icequill.render;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.document.Invoice;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.render.pdf.Html;
import icequill.render.pdf.SpokenText;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a template of a shop's own may hold, as a screen reader finds it: lists, links, spans, pictures, long tables. */
class TaggingTest {

    @TempDir
    Path shop;

    @Test
    void pdf_inlineElementsWithinSentences_readInOrder() throws Exception {
        byte[] pdf = pdf("""
                <h1>Hello</h1><p>One <b>two</b> three <a href="https://quillwater.example/x">four <i>five</i></a> six
                <span lang="es">siete</span> and <a href="#x">no link</a> at the end.</p>
                <p>%s</p>""".formatted("a long line of <b>words that is</b> broken more than once ".repeat(9)));

        assertSpoken(pdf);
        assertThat(SpokenText.of(pdf).types()).startsWith("Document", "H1", "P", "Link", "Span", "P").hasSize(6);
    }

    /** What the first font lacks is drawn from the second, and read as it was written. */
    @Test
    void pdf_charactersOfTheSecondFont_areDrawnAndRead() throws Exception {
        byte[] pdf = pdf("<h1>Երևան ⚠ sharp fins</h1><p>Call <b>☎ 555</b> → now</p>");

        assertSpoken(pdf);
        assertThat(SpokenText.of(pdf).text()).isEqualTo("Երևան ⚠ sharp fins Call ☎ 555 → now");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getPage(0).getResources().getFontNames()).hasSize(3);
        }
    }

    @Test
    void pdf_lists_areListsWithItems() throws Exception {
        byte[] pdf = pdf("""
                <h1>Lists</h1><ul><li>one</li><li>two <b>bold</b><ol><li><p>inner</p></li></ol> after</li></ul>""");

        assertSpoken(pdf);
        assertThat(SpokenText.of(pdf).types()).containsExactly("Document", "H1", "L", "LI", "LBody", "LI", "LBody",
                "L", "LI", "LBody", "P");
    }

    /** On every page the head is painted; it is read once. */
    @Test
    void pdf_longTable_headIsReadOnce() throws Exception {
        String rows = IntStream.rangeClosed(1, 150)
                .mapToObj(i -> "<tr><th scope=\"row\">row " + i + "</th><td>" + i + "</td><td></td></tr>")
                .collect(Collectors.joining());
        byte[] pdf = pdf("<h1>Table</h1><table style=\"-fs-table-paginate: paginate\"><thead><tr><th>Name</th>"
                + "<th>Value</th><th>Empty</th></tr></thead><tbody>" + rows
                + "<tr><td colspan=\"2\">sum</td><td>9</td></tr></tbody></table>");

        assertSpoken(pdf);
        SpokenText spoken = SpokenText.of(pdf);
        assertThat(spoken.count("TH")).isEqualTo(153);
        assertThat(spoken.count("TD")).isEqualTo(302);
        assertThat(attributes(pdf, "TD")).contains("ColSpan=COSInt{2}", "O=COSName{Table}");
        assertThat(attributes(pdf, "TH")).contains("Scope=COSName{Column}", "Scope=COSName{Row}");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isGreaterThan(2);
        }
    }

    @Test
    void pdf_tableForLooks_isNoTable() throws Exception {
        byte[] pdf = pdf(
                "<h1>Looks</h1><table role=\"presentation\"><tr><td>left</td><td><p>right</p></td></tr></table>");

        assertSpoken(pdf);
        assertThat(SpokenText.of(pdf).types()).containsExactly("Document", "H1", "Div", "Div", "P");
    }

    @Test
    void pdf_picture_isAFigureWithItsText() throws Exception {
        ImageIO.write(new BufferedImage(30, 10, BufferedImage.TYPE_INT_RGB), "png", shop.resolve("a.png").toFile());
        byte[] pdf = pdf(
                "<h1>Picture</h1><p><img src=\"a.png\" alt=\"A fridge\"/></p><p>x <img src=\"a.png\" alt=\"\"/></p>");

        assertSpoken(pdf);
        assertThat(SpokenText.of(pdf).count("Figure")).isEqualTo(1);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(find(document.getDocumentCatalog().getStructureTreeRoot(), "Figure"))
                    .extracting(PDStructureElement::getAlternateDescription).containsExactly("A fridge");
        }
    }

    @Test
    void pdf_link_leadsWhereItSays() throws Exception {
        byte[] pdf = pdf("<h1>Link</h1><p>Write to <a href=\"mailto:office@quillwater.example\">our office</a>.</p>");

        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getPage(0).getAnnotations()).singleElement()
                    .isInstanceOfSatisfying(PDAnnotationLink.class, link -> {
                        assertThat(link.getContents()).isEqualTo("our office");
                        assertThat(link.getAction().getCOSObject().getString(COSName.URI))
                                .isEqualTo("mailto:office@quillwater.example");
                        assertThat(link.getRectangle().getWidth()).isBetween(20f, 80f);
                    });
        }
    }

    /** Proof that the judge sees what the device takes care of. */
    @ParameterizedTest
    @CsvSource({"<h1>a</h1><h3>b</h3>, 7.4.2-1", "<ul><li>x</li></ul><h2>late</h2>, 7.4.2-1"})
    void judge_carelessPage_failsByRule(String body, String rule) throws Exception {
        assertThat(VeraPdf.brokenRules(pdf(body), "ua1")).containsExactly(rule);
    }

    private void assertSpoken(byte[] pdf) throws Exception {
        for (String standard : VeraPdf.STANDARDS) {
            assertThat(VeraPdf.brokenRules(pdf, standard)).as(standard).isEmpty();
        }
        Html html = Printer.of(shop).html(plain()).orElseThrow();
        assertThat(SpokenText.of(pdf).text()).isEqualTo(SpokenText.written(html));
    }

    private byte[] pdf(String body) throws Exception {
        Files.createDirectories(shop.resolve("templates"));
        Files.writeString(shop.resolve("templates/invoice.ftlh"), """
                <html xmlns="http://www.w3.org/1999/xhtml" lang="en"><head><title>A page</title>
                <style>body { font-family: Liberation Sans }
                @page { @bottom-right { content: counter(page); font-family: Liberation Sans } }</style></head>
                <body>%s</body></html>""".formatted(body));
        Printer printer = Printer.of(shop);
        return printer.html(plain()).then(html -> printer.pdf(plain(), html, List.of(), Map.of())).orElseThrow();
    }

    private static Invoice plain() {
        return InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").invoice();
    }

    private static List<String> attributes(byte[] pdf, String type) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return find(document.getDocumentCatalog().getStructureTreeRoot(), type).stream()
                    .map(element -> element.getCOSObject().getCOSDictionary(COSName.A))
                    .flatMap(attributes -> attributes == null
                            ? Stream.<Map.Entry<COSName, ?>>empty()
                            : entries(attributes))
                    .map(entry -> entry.getKey().getName() + "=" + entry.getValue()).distinct().toList();
        }
    }

    private static Stream<? extends Map.Entry<COSName, ?>> entries(COSDictionary dictionary) {
        return dictionary.entrySet().stream();
    }

    private static List<PDStructureElement> find(PDStructureNode node, String type) {
        return node.getKids().stream().filter(PDStructureElement.class::isInstance).map(PDStructureElement.class::cast)
                .flatMap(kid -> Stream.concat(
                        kid.getStructureType().equals(type)
                                ? Stream.of(kid)
                                : Stream.empty(),
                        find(kid, type).stream()))
                .toList();
    }
}
