package icequill.render.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.openpdf.text.pdf.PdfArray;
import org.openpdf.text.pdf.PdfDictionary;
import org.openpdf.text.pdf.PdfName;
import org.openpdf.text.pdf.PdfNumber;
import org.openpdf.text.pdf.PdfObject;
import org.openpdf.text.pdf.PdfString;
import org.openpdf.text.pdf.PdfStructureElement;
import org.openpdf.text.pdf.PdfStructureTreeRoot;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The structure of a paper (ISO 32000-1, 14.7.2), as the page's own tree of elements has it. The renderer paints out of order:
 * a paragraph's own text first, then what stands in bold within it. So what is painted is only collected here, by the node it
 * came from, and {@link #close} puts it in the order in which the page was written.
 */
final class StructureTree {

    private static final PdfName STRUCTURE_ELEMENT = new PdfName("StructElem");
    private static final PdfName LIST_BODY = new PdfName("LBody");

    /** A piece of painted content or a link's area; the offset is its place within the node's text. */
    private record Piece(int offset, PdfObject kid) {}

    private final PdfStructureTreeRoot root;
    private final IdentityHashMap<Node, PdfStructureElement> elements = new IdentityHashMap<>();
    private final IdentityHashMap<Node, PdfStructureElement> listBodies = new IdentityHashMap<>();
    private final IdentityHashMap<Node, List<Piece>> pieces = new IdentityHashMap<>();

    StructureTree(PdfStructureTreeRoot root) {
        this.root = root;
    }

    /** The element that content painted for the node belongs to. */
    PdfStructureElement owner(Node node) {
        for (Node around = node; around != null; around = around.getParentNode()) {
            if (around instanceof Element element) {
                Optional<PdfStructureElement> own = element(element);
                if (own.isPresent()) {
                    return listBodies.getOrDefault(element, own.get());
                }
            }
        }
        throw new IllegalStateException("content outside the body of the page");
    }

    void add(Node node, int offset, PdfObject kid) {
        pieces.computeIfAbsent(node, first -> new ArrayList<>()).add(new Piece(offset, kid));
    }

    /** The key by which an annotation names the element it belongs to. */
    int key(PdfStructureElement owner) {
        return root.addExistingObject(owner.getReference());
    }

    /** Puts everything in order; nothing may be added afterwards. */
    void close(Element page) {
        PdfArray top = new PdfArray();
        kids(page).forEach(kid -> {
            ((PdfDictionary) kid).put(PdfName.P, root.getReference());
            top.add(kid);
        });
        root.put(PdfName.K, top);
    }

    private Optional<PdfStructureElement> element(Element element) {
        PdfStructureElement known = elements.get(element);
        return known != null ? Optional.of(known) : Tag.of(element).map(tag -> made(element, tag));
    }

    /** The library hangs each new element under the root; {@link #close} hangs it where it belongs. */
    private PdfStructureElement made(Element element, Tag tag) {
        PdfStructureElement made = new PdfStructureElement(root, tag.type());
        tag.attributes(element).ifPresent(attributes -> made.put(PdfName.A, attributes));
        if (element.hasAttribute("lang")) {
            made.put(PdfName.LANG, new PdfString(element.getAttribute("lang")));
        }
        if (Tag.isShaped(element)) {
            made.put(PdfName.ACTUALTEXT, new PdfString(element.getTextContent(), PdfString.TEXT_UNICODE));
        }
        elements.put(element, made);
        if (tag.isListItem()) {
            listBodies.put(element, new PdfStructureElement(root, LIST_BODY));
        }
        return made;
    }

    private List<PdfObject> kids(Node node) {
        List<PdfObject> kids = new ArrayList<>();
        pieces.getOrDefault(node, List.of()).stream().sorted(Comparator.comparingInt(Piece::offset)).map(Piece::kid)
                .forEach(kids::add);
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            kids.addAll(kids(child));
        }
        if (!(node instanceof Element element) || (kids.isEmpty() && !Tag.isTablePart(element))) {
            return kids;
        }
        return element(element).map(own -> List.<PdfObject>of(filled(own, element, kids))).orElse(kids);
    }

    private PdfStructureElement filled(PdfStructureElement own, Element element, List<PdfObject> kids) {
        PdfStructureElement body = listBodies.get(element);
        if (body != null) {
            Map<Boolean, List<PdfObject>> labels = kids.stream()
                    .collect(Collectors.partitioningBy(StructureTree::isLabel));
            fill(body, labels.getOrDefault(false, List.of()));
            fill(own, Stream.concat(labels.getOrDefault(true, List.of()).stream(), Stream.of(body)).toList());
        } else {
            fill(own, kids);
        }
        return own;
    }

    private static boolean isLabel(PdfObject kid) {
        return kid instanceof PdfStructureElement element && Tag.LABEL.equals(element.get(PdfName.S));
    }

    private static void fill(PdfStructureElement parent, List<PdfObject> kids) {
        PdfArray array = new PdfArray();
        for (PdfObject kid : kids) {
            if (kid instanceof PdfStructureElement element) {
                element.put(PdfName.P, parent.getReference());
            }
            array.add(kid);
        }
        parent.remove(PdfName.PG);
        parent.put(PdfName.K, array);
        parent.put(PdfName.TYPE, STRUCTURE_ELEMENT);
    }

    /** A reference to marked content on a page. */
    static PdfDictionary content(PdfObject page, int mark) {
        PdfDictionary reference = new PdfDictionary(PdfName.MCR);
        reference.put(PdfName.PG, page);
        reference.put(PdfName.MCID, new PdfNumber(mark));
        return reference;
    }
}
