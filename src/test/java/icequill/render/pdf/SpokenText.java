package icequill.render.pdf;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;
import org.xml.sax.InputSource;

/** What a screen reader would read of a paper, and what it should read: the page's text in the order it was written. */
public record SpokenText(String text, List<String> types) {

    private static final Set<String> INLINE_TYPES = Set.of("Span", "Link", "Lbl");
    private static final Set<String> INLINE_ELEMENTS = Set.of("span", "a", "b", "i", "strong", "em", "small");

    /** Pictures are told by the words in an attribute; without it they are mere decoration. */
    private static final Map<String, String> PICTURES = Map.of("img", "alt", "svg", "aria-label");

    /** Follows the structure tree of a PDF, as PDFBox reads it. */
    public static SpokenText of(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Map<COSDictionary, Map<Integer, String>> contents = new HashMap<>();
            for (PDPage page : document.getPages()) {
                contents.put(page.getCOSObject(), contents(page));
            }
            StringBuilder text = new StringBuilder();
            List<String> types = new ArrayList<>();
            read(document.getDocumentCatalog().getStructureTreeRoot(), contents, text, types);
            return new SpokenText(normal(text.toString()), List.copyOf(types));
        }
    }

    /** The text of a page in the order of its elements. */
    public static String written(Html html) throws Exception {
        String page = html.text().replaceFirst("<!DOCTYPE html>", "");
        Element root = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(page))).getDocumentElement();
        StringBuilder text = new StringBuilder();
        write(root.getElementsByTagName("body").item(0), text);
        return normal(text.toString());
    }

    public long count(String type) {
        return types.stream().filter(type::equals).count();
    }

    private static String normal(String text) {
        return text.replaceAll("[\\s\u00a0]+", " ").strip();
    }

    private static Map<Integer, String> contents(PDPage page) throws IOException {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.processPage(page);
        return extractor.getMarkedContents().stream().filter(content -> content.getMCID() >= 0)
                .collect(Collectors.toMap(PDMarkedContent::getMCID, SpokenText::text));
    }

    private static String text(PDMarkedContent content) {
        return content.getContents().stream().filter(TextPosition.class::isInstance)
                .map(part -> ((TextPosition) part).getUnicode()).collect(Collectors.joining());
    }

    private static void read(PDStructureNode node, Map<COSDictionary, Map<Integer, String>> contents,
            StringBuilder text, List<String> types) {
        boolean inline = node instanceof PDStructureElement element
                && INLINE_TYPES.contains(element.getStructureType());
        if (node instanceof PDStructureElement element) {
            types.add(element.getStructureType());
            if (element.getStructureType().equals("Figure")) {
                text.append(' ').append(element.getAlternateDescription()).append(' ');
                return;
            }
        }
        if (node instanceof PDStructureElement element && element.getActualText() != null) {
            text.append(element.getActualText());
            return;
        }
        text.append(inline ? "" : " ");
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureNode child) {
                read(child, contents, text, types);
            } else if (kid instanceof PDMarkedContentReference reference) {
                COSDictionary page = reference.getCOSObject().getCOSDictionary(COSName.PG);
                text.append(contents.getOrDefault(page, Map.of()).get(reference.getMCID()));
            }
        }
        text.append(inline ? "" : " ");
    }

    private static void write(Node node, StringBuilder text) {
        if (node instanceof Element picture && PICTURES.containsKey(picture.getNodeName())) {
            text.append(' ').append(picture.getAttribute(PICTURES.get(picture.getNodeName()))).append(' ');
            return;
        }
        boolean inline = INLINE_ELEMENTS.contains(node.getNodeName());
        text.append(inline || node instanceof Text ? "" : " ");
        if (node instanceof Text own) {
            text.append(own.getData());
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            write(child, text);
        }
        text.append(inline || node instanceof Text ? "" : " ");
    }
}
