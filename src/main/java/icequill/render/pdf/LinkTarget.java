package icequill.render.pdf;

import java.util.Optional;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Where a link leads: out of the paper, to an address on the web, a mailbox or a telephone. */
record LinkTarget(Element anchor, String address) {

    /** Empty when the element is no link, or one that leads elsewhere. */
    static Optional<LinkTarget> of(Element element) {
        String address = element.getAttribute("href");
        return element.getNodeName().equals("a") && address.matches("(https?|mailto|tel):.+")
                ? Optional.of(new LinkTarget(element, address))
                : Optional.empty();
    }

    /** The link that a text stands in. */
    static Optional<LinkTarget> around(Node text) {
        for (Node node = text.getParentNode(); node instanceof Element element; node = node.getParentNode()) {
            Optional<LinkTarget> link = of(element);
            if (link.isPresent()) {
                return link;
            }
        }
        return Optional.empty();
    }

    /** What it says, for those who do not see it. */
    String text() {
        return anchor.getTextContent().strip().replaceAll("\\s+", " ");
    }
}
