package icequill.render.pdf;

import icequill.render.drawing.Drawings;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumber;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * What an element of a page is to a screen reader: a structure type of ISO 32000-1, 14.8.4. Elements without one, such as
 * {@code span}, add nothing to the structure; what they hold belongs to the element around them.
 */
record Tag(PdfName type) {

    private static final Map<String, String> TYPES = Map.ofEntries(Map.entry("body", "Document"),
            Map.entry("section", "Sect"), Map.entry("div", "Div"), Map.entry("blockquote", "BlockQuote"),
            Map.entry("h1", "H1"), Map.entry("h2", "H2"), Map.entry("h3", "H3"), Map.entry("h4", "H4"),
            Map.entry("h5", "H5"), Map.entry("h6", "H6"), Map.entry("p", "P"), Map.entry("pre", "P"),
            Map.entry("dt", "P"), Map.entry("dd", "P"), Map.entry("ul", "L"), Map.entry("ol", "L"),
            Map.entry("li", "LI"), Map.entry("table", "Table"), Map.entry("caption", "Caption"),
            Map.entry("thead", "THead"), Map.entry("tbody", "TBody"), Map.entry("tfoot", "TFoot"),
            Map.entry("tr", "TR"), Map.entry("th", "TH"), Map.entry("td", "TD"), Map.entry("img", "Figure"),
            Map.entry(Drawings.ELEMENT, "Figure"));
    private static final Set<String> CELLS = Set.of("th", "td");
    private static final Set<String> TABLE_PARTS = Set.of("table", "thead", "tbody", "tfoot", "tr", "th", "td");
    private static final Set<String> LISTS = Set.of("ul", "ol");
    private static final PdfName DIVISION = new PdfName("Div");
    private static final PdfName ITEM = new PdfName("LI");
    /** The number of an item of a list. */
    static final PdfName LABEL = new PdfName("Lbl");

    /** Empty for an element that adds nothing to the structure. */
    static Optional<Tag> of(Element element) {
        String name = element.getNodeName();
        if (isTablePart(element) && isForLooks(element)) {
            return CELLS.contains(name) ? Optional.of(new Tag(DIVISION)) : Optional.empty();
        }
        if (name.equals("a")) {
            return LinkTarget.of(element).flatMap(target -> tag("Link"));
        }
        if (name.equals("span") && element.getAttribute("class").equals("mark")) {
            return Optional.of(new Tag(LABEL));
        }
        if (isShaped(element)) {
            return tag("Span");
        }
        return Optional.ofNullable(TYPES.get(name)).flatMap(Tag::tag)
                .or(() -> element.hasAttribute("lang") && !name.equals("html") ? tag("Span") : Optional.empty());
    }

    /** Whether what lies behind outlines stands in the order of the line. */
    static boolean isShaped(Element element) {
        return element.getNodeName().equals("span") && element.getAttribute("class").equals(FallbackRuns.SHAPED);
    }

    private static Optional<Tag> tag(String type) {
        return Optional.of(new Tag(new PdfName(type)));
    }

    /** Tables keep their rows and cells even where nothing stands in them. */
    static boolean isTablePart(Element element) {
        return TABLE_PARTS.contains(element.getNodeName());
    }

    /** A table that only places things beside each other, as its role says. */
    private static boolean isForLooks(Element part) {
        Node node = part;
        while (node instanceof Element element && !element.getNodeName().equals("table")) {
            node = element.getParentNode();
        }
        return node instanceof Element table && table.getAttribute("role").equals("presentation");
    }

    boolean isListItem() {
        return type.equals(ITEM);
    }

    /** What else readers are told of the element, for its attributes. */
    Optional<PdfDictionary> attributes(Element element) {
        PdfDictionary attributes = new PdfDictionary();
        String name = element.getNodeName();
        if (LISTS.contains(name)) {
            attributes.put(PdfName.O, new PdfName("List"));
            attributes.put(new PdfName("ListNumbering"), new PdfName(name.equals("ol") ? "Decimal" : "Disc"));
        }
        if (CELLS.contains(name) && !type.equals(DIVISION)) {
            attributes.put(PdfName.O, new PdfName("Table"));
            if (name.equals("th")) {
                attributes.put(new PdfName("Scope"),
                        new PdfName(element.getAttribute("scope").equals("row") ? "Row" : "Column"));
            }
            span(element, "colspan", "ColSpan", attributes);
            span(element, "rowspan", "RowSpan", attributes);
        }
        return attributes.size() > 1 ? Optional.of(attributes) : Optional.empty();
    }

    private static void span(Element cell, String attribute, String name, PdfDictionary attributes) {
        String span = cell.getAttribute(attribute);
        if (span.matches("[0-9]+")) {
            attributes.put(new PdfName(name), new PdfNumber(span));
        }
    }
}
