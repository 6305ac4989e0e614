package icequill.render.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.render.InvoiceFixture;
import icequill.render.Printer;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xhtmlrenderer.context.StyleReference;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;
import org.xhtmlrenderer.css.newmatch.PageInfo;
import org.xhtmlrenderer.css.sheet.PropertyDeclaration;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xml.sax.InputSource;

/** Styles that are remembered from paper to paper, beside those that the renderer itself finds for each. */
class KnownStylesTest {

    private static final String BODY = """
            <body><div class="a"><p>one</p><p class="a b">two</p><p id="it">three</p></div>
            <table width="90%"><tr><td>1</td><td colspan="2" align="right">2</td></tr><tr><td style="color: #123456">3</td></tr></table>
            <p class="a"><a href="x">four</a><br/></p></body>""";

    @Test
    void papersOfOneSheet_oneAfterTheOther_lookAsTheRendererSays() throws Exception {
        for (int lines : new int[]{12, 3, 40}) {
            for (Language language : new Language[]{Language.ENGLISH, Language.SPANISH}) {
                assertSame(Printer.of(Path.of("no-such-shop"))
                        .html(InvoiceFixture.of(language, PaperSize.A4, "USD", "US").withLines(lines).invoice())
                        .orElseThrow().text().replaceFirst("<!DOCTYPE html>", ""));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"p { color: #ff0000 }", "p:first-child { color: #ff0000 }", "p + p { color: #ff0000 }",
            "td:last-child { font-weight: bold }", ".a p { margin: 0 } div > p.b { margin: 1mm } #it { padding: 2mm }",
            "td:nth-child(2) { color: #00ff00 }", "p:before { content: \"}\" } p.b:before { content: '@page {' }",
            "/* @page { */ p { color: #0000ff } @page { margin: 30mm; @bottom-left { content: \"} foot\" } } td { margin: 0 }",
            "@page first { margin: 7mm } p { page: first } @page { size: 100mm 200mm }",
            "@media screen { p { color: #ff0000 } } @media print { p { color: #00ff00 } }",
            "[colspan] { color: #ff0000 } td[align=right] { color: #00ff00 }", ""})
    void sheetOfAnyRules_looksAsTheRendererSays(String sheet) throws Exception {
        String page = "<html><head><title>t</title><style>%s</style></head>%s</html>".formatted(sheet, BODY);

        assertSame(page);
        assertSame(page.replace("three", "five").replace("</div>", "<p>six</p></div>"));
    }

    /** Rules of pages name the paper, so they are never those of another. */
    @Test
    void sheetsThatDifferInTheirPages_eachHasItsOwn() throws Exception {
        for (String foot : new String[]{"first", "second"}) {
            assertSame("<html><head><title>t</title><style>@page { @bottom-left { content: \"" + foot
                    + "\" } } p { margin: 0 }</style></head>" + BODY + "</html>");
        }
    }

    private static void assertSame(String html) throws Exception {
        List<String> known = styles(html, true);

        assertThat(known).hasSizeGreaterThan(5).isEqualTo(styles(html, false));
    }

    /** What is found for each element, for what stands before and after it, and for pages. */
    @SuppressWarnings("deprecation")
    private static List<String> styles(String html, boolean known) throws Exception {
        Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(html)));
        ITextOutputDevice device = new ITextOutputDevice(ITextRenderer.DEFAULT_DOTS_PER_POINT);
        ShopImages images = new ShopImages(Path.of("no-such-shop"), device);
        ITextRenderer renderer = new ITextRenderer(ITextRenderer.DEFAULT_DOTS_PER_POINT,
                ITextRenderer.DEFAULT_DOTS_PER_PIXEL, device, images);
        if (known) {
            renderer.getSharedContext().setCss(new KnownStyles(images));
        }
        renderer.setDocument(document, null, new OwnLinks());
        StyleReference found = renderer.getSharedContext().getCss();
        NodeList elements = document.getElementsByTagName("*");
        return Stream.concat(
                IntStream.range(0, elements.getLength())
                        .mapToObj(i -> style(found, (Element) elements.item(i))),
                Stream.of("", "first").flatMap(name -> Stream.of("first", "left", "right")
                        .map(which -> page(found.getPageStyle(name.isEmpty() ? null : name, which)))))
                .toList();
    }

    private static String style(StyleReference found, Element element) {
        return element.getTagName() + " " + print(found.getCascadedStyle(element, false)) + " before "
                + print(found.getPseudoElementStyle(element, "before")) + " after "
                + print(found.getPseudoElementStyle(element, "after"));
    }

    private static String page(PageInfo page) {
        return print(page.getPageStyle()) + page.getMarginBoxes().entrySet().stream()
                .map(box -> box.getKey() + " " + box.getValue().stream()
                        .map(PropertyDeclaration::getDeclarationStandardText).sorted().toList())
                .sorted().toList();
    }

    private static String print(@Nullable CascadedStyle style) {
        return style == null ? "none" : style.getFingerprint();
    }
}
