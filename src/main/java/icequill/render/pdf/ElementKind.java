package icequill.render.pdf;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;

/** Elements of one name with the same attributes, within elements of one kind: the rules of one style sheet treat them alike. */
final class ElementKind {

    /** Enough for any template of ours; where elements have names of their own, the later ones are not remembered. */
    private static final int MOST = 1_000;
    private static final char PART = '\u0000';

    private final CascadedStyle style;
    private final Map<String, Optional<CascadedStyle>> pseudo = new ConcurrentHashMap<>();
    private final Map<String, ElementKind> within = new ConcurrentHashMap<>();

    ElementKind(CascadedStyle style) {
        this.style = style;
    }

    CascadedStyle style() {
        return style;
    }

    /** @param found called where no element of the kind was asked for before */
    ElementKind of(Element element, Supplier<CascadedStyle> found) {
        String description = description(element);
        ElementKind known = within.get(description);
        if (known != null) {
            return known;
        }
        ElementKind made = new ElementKind(found.get());
        if (within.size() < MOST) {
            within.put(description, made);
        }
        return made;
    }

    /** Of what stands before or after it, or begins it. */
    Optional<CascadedStyle> pseudo(String name, Function<String, Optional<CascadedStyle>> found) {
        return pseudo.computeIfAbsent(name, found);
    }

    private static String description(Element element) {
        NamedNodeMap attributes = element.getAttributes();
        if (attributes.getLength() == 0) {
            return element.getNodeName();
        }
        StringBuilder text = new StringBuilder(element.getNodeName());
        for (int i = 0; i < attributes.getLength(); i++) {
            Node attribute = attributes.item(i);
            text.append(PART).append(attribute.getNodeName()).append(PART).append(attribute.getNodeValue());
        }
        return text.toString();
    }
}
