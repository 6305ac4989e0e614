package icequill.render.pdf;

import icequill.document.Attachment;
import icequill.document.Paper;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.render.drawing.Drawings;
import icequill.render.limits.PrintRoom;
import icequill.render.words.DateForms;
import icequill.render.words.Family;
import icequill.render.words.Fonts;
import icequill.render.words.Words;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.openpdf.text.pdf.PdfWriter;
import org.openpdf.text.pdf.PdfXConformanceException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xhtmlrenderer.layout.Layer;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.render.BlockBox;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Sets HTML as PDF with embedded fonts. */
public final class PdfSetter {

    /** Browsers want it, and it names no file; it is the only document type let through. */
    private static final String DOCUMENT_TYPE = "<!DOCTYPE html>";

    private static final int MOST_PAGES = 2_000;
    private static final List<String> NEEDED = List.of("title", "body");
    private static final List<String> SPANS = List.of("rowspan", "colspan");

    private final Path shop;

    public PdfSetter(Path shop) {
        this.shop = shop;
    }

    public Validated<byte[]> set(Paper paper, Html html, List<Attachment> attachments, Map<String, String> marks) {
        return parse(html).then(PdfSetter::whole).then(PdfSetter::measured).then(PdfSetter::drawable)
                .then(document -> set(paper, document, attachments, marks));
    }

    // The renderer makes its own context, whose styles can be given to it in no other way.
    @SuppressWarnings("deprecation")
    private Validated<byte[]> set(Paper paper, Document document, List<Attachment> attachments,
            Map<String, String> marks) {
        Set<Family> families = FallbackRuns.mark(document);
        families.addAll(ofStyle(document));
        TaggedDevice device = new TaggedDevice();
        ShopImages images = new ShopImages(shop, device);
        Drawings drawings = new Drawings(device);
        ITextRenderer renderer = new ITextRenderer(ITextRenderer.DEFAULT_DOTS_PER_POINT,
                ITextRenderer.DEFAULT_DOTS_PER_PIXEL, device, images, Fonts.resolver(families), drawings,
                new ShapedWidths());
        renderer.getSharedContext().setCss(new KnownStyles(images));
        renderer.getSharedContext().setLineBreakingStrategy(new LineEnds(new DateForms(Words.of(paper.language()))));
        renderer.setDocument(document, null, new OwnLinks());
        // Dictionaries packed into streams could not be given fixed ids; contents and fonts are packed all the same.
        renderer.setCompressionEnabled(false);
        renderer.setPDFXConformance(PdfWriter.PDFA3A);
        renderer.setListener(new ArchiveFormat(document, device, paper.date(), attachments, marks));
        renderer.layout();
        int pages = pages(renderer);
        if (pages > MOST_PAGES) {
            return PrintRoom.limit("the paper has " + pages + " pages, and may have " + MOST_PAGES);
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            renderer.createPDF(bytes);
        } catch (PdfXConformanceException notForArchives) {
            return Validated.invalid(new Problem(Code.TEMPLATE, Place.ofFile("templates"),
                    "the page cannot be kept in archives: " + notForArchives.getMessage(),
                    "the fonts and colors of our own templates"));
        }
        Problems problems = new Problems();
        if (!images.refused().isEmpty()) {
            problems.add(Code.TEMPLATE, Place.ofFile("templates"), "asks for " + String.join(", ", images.refused()),
                    "a PNG or JPEG that lies in the shop folder, by its bare name");
        }
        drawings.refused().stream().distinct().forEach(refused -> problems.add(Code.TEMPLATE,
                Place.ofFile("templates"), refused, Drawings.ALLOWED));
        return problems.or(() -> FixedIds.in(bytes.toByteArray()));
    }

    /** A page has a title for its readers, and a body. */
    private static Validated<Document> whole(Document document) {
        List<String> missing = NEEDED.stream().filter(name -> document.getElementsByTagName(name).getLength() == 0)
                .toList();
        return missing.isEmpty()
                ? Validated.valid(document)
                : Validated.invalid(new Problem(Code.TEMPLATE, Place.ofFile("templates"),
                        "the page lacks " + String.join(" and ", missing), "html with head, title and body"));
    }

    /** Cells that reach over many others take room for each. */
    private static Validated<Document> measured(Document document) {
        NodeList cells = document.getElementsByTagName("*");
        for (int i = 0; i < cells.getLength(); i++) {
            if (cells.item(i) instanceof Element cell) {
                for (String span : SPANS) {
                    if (cell.hasAttribute(span) && !cell.getAttribute(span).matches("[0-9]{1,3}")) {
                        return PrintRoom.limit("a cell has " + span + "=\"" + cell.getAttribute(span)
                                + "\", and may have up to 999");
                    }
                }
            }
        }
        return Validated.valid(document);
    }

    /** What the shop's files say is checked where it is read; this finds what a template of its own says. */
    private static Validated<Document> drawable(Document document) {
        List<Integer> missing = Fonts.missing(document.getElementsByTagName("body").item(0).getTextContent());
        return missing.isEmpty()
                ? Validated.valid(document)
                : Validated.invalid(new Problem(Code.NO_GLYPH, Place.ofFile("templates"),
                        "our fonts cannot draw " + Fonts.named(missing),
                        Fonts.ALLOWED));
    }

    /** The style sheet asks for other fonts where the foot of the pages needs them. */
    private static Set<Family> ofStyle(Document document) {
        Node style = document.getElementsByTagName("style").item(0);
        return Arrays.stream(Family.values())
                .filter(family -> style != null && style.getTextContent().contains(family.style()))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Family.class)));
    }

    /** No document type and no entity from outside is read. */
    private static Validated<Document> parse(Html html) {
        String text = html.text().startsWith(DOCUMENT_TYPE)
                ? html.text().substring(DOCUMENT_TYPE.length())
                : html.text();
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setXIncludeAware(false);
            factory.setExpandEntityReferences(false);
            return Validated.valid(factory.newDocumentBuilder().parse(new InputSource(new StringReader(text))));
        } catch (SAXParseException broken) {
            return Validated
                    .invalid(new Problem(Code.TEMPLATE, new Place("the filled-in template", broken.getLineNumber(), ""),
                            "not well-formed: " + broken.getMessage(),
                            "close every element; no document type but " + DOCUMENT_TYPE));
        } catch (SAXException | IOException | ParserConfigurationException broken) {
            throw new IllegalStateException(broken);
        }
    }

    /** How many there are, without those at the end on which nothing would stand. */
    private static int pages(ITextRenderer laidOut) {
        BlockBox root = Objects.requireNonNull(laidOut.getRootBox());
        Layer layer = Objects.requireNonNull(root.getLayer());
        layer.trimEmptyPages(PageEnds.lastLine(root));
        return layer.getPages().size();
    }
}
