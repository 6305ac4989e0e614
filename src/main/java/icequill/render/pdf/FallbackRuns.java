package icequill.render.pdf;

import icequill.render.words.Fonts;
import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/** Sets the characters of a page that our first font does not have in the second one. The renderer never looks for one itself. */
final class FallbackRuns {

    private FallbackRuns() {
    }

    /** Whether anything had to be set so. */
    static boolean mark(Document page) {
        List<Text> texts = new ArrayList<>();
        collect(page.getElementsByTagName("body").item(0), texts);
        return texts.stream().map(FallbackRuns::mark).reduce(false, Boolean::logicalOr);
    }

    private static void collect(Node node, List<Text> texts) {
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Text text && !text.getData().codePoints().allMatch(Fonts::isOurs)) {
                texts.add(text);
            }
            collect(child, texts);
        }
    }

    private static boolean mark(Text text) {
        String data = text.getData();
        Node parent = text.getParentNode();
        int start = 0;
        while (start < data.length()) {
            boolean ours = Fonts.isOurs(data.codePointAt(start));
            int end = start;
            while (end < data.length() && Fonts.isOurs(data.codePointAt(end)) == ours) {
                end += Character.charCount(data.codePointAt(end));
            }
            Text run = text.getOwnerDocument().createTextNode(data.substring(start, end));
            parent.insertBefore(ours ? run : inFallback(run), text);
            start = end;
        }
        parent.removeChild(text);
        return true;
    }

    private static Element inFallback(Text run) {
        Element span = run.getOwnerDocument().createElement("span");
        span.setAttribute("style", "font-family: " + Fonts.FALLBACK);
        span.appendChild(run);
        return span;
    }
}
