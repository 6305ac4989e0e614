package icequill.render.pdf;

import icequill.render.words.Family;
import icequill.render.words.FontRun;
import icequill.render.words.Fonts;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/** Sets the characters of a page that our first font does not have in another one. The renderer never looks for one itself. */
final class FallbackRuns {

    /** The class of elements whose text is shaped. */
    static final String SHAPED = "shaped";

    private FallbackRuns() {
    }

    /** Marks them, and tells which families they need. */
    static Set<Family> mark(Document page) {
        List<Text> texts = new ArrayList<>();
        collect(page.getElementsByTagName("body").item(0), texts);
        Set<Family> used = EnumSet.noneOf(Family.class);
        texts.forEach(text -> mark(text, used));
        return used;
    }

    private static void collect(Node node, List<Text> texts) {
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Text text && !text.getData().codePoints().allMatch(FallbackRuns::isOfFirst)) {
                texts.add(text);
            }
            collect(child, texts);
        }
    }

    private static boolean isOfFirst(int point) {
        return Fonts.of(point).filter(Family.FIRST::equals).isPresent();
    }

    private static void mark(Text text, Set<Family> used) {
        Node parent = text.getParentNode();
        for (FontRun run : FontRun.of(text.getData())) {
            used.add(run.family());
            Text part = text.getOwnerDocument().createTextNode(run.text());
            parent.insertBefore(run.family() == Family.FIRST ? part : in(run.family(), part), text);
        }
        parent.removeChild(text);
    }

    /** What is shaped is drawn as it is, and never thickened by the renderer. */
    private static Element in(Family family, Text run) {
        Element span = run.getOwnerDocument().createElement("span");
        String style = "font-family: " + family.style();
        if (family == Family.SHAPED) {
            span.setAttribute("class", SHAPED);
            span.setAttribute("style", style + "; font-weight: normal; font-style: normal");
        } else {
            span.setAttribute("style", style);
        }
        span.appendChild(run);
        return span;
    }
}
