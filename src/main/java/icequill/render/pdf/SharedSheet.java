package icequill.render.pdf;

import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.xhtmlrenderer.context.StylesheetFactoryImpl;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;
import org.xhtmlrenderer.css.sheet.Stylesheet;
import org.xhtmlrenderer.css.sheet.StylesheetInfo;

/**
 * A style sheet that was read once, and what it says of each kind of element, for all papers that have it. What it says of pages is another
 * sheet, since their feet name the paper.
 *
 * @param rules for elements, after the renderer's own
 * @param document what a document stands for, in which the outermost kinds are
 */
record SharedSheet(List<Stylesheet> rules, ElementKind document) {

    /** What a rule looks at besides an element's kind, or where more is to be read. */
    private static final Pattern OTHER = Pattern
            .compile("[+~]|@import|@font-face|:(first-child|last-child|nth|even|odd|has|lang)");
    private static final int MOST = 32;
    private static final Map<String, SharedSheet> KNOWN = new ConcurrentHashMap<>();

    /** Empty where its rules do not treat all elements of one kind alike. */
    static Optional<SharedSheet> of(StylesheetFactoryImpl factory, StylesheetInfo own, String rules) {
        SharedSheet known = KNOWN.get(rules);
        if (known != null) {
            return Optional.of(known);
        }
        if (OTHER.matcher(rules).find()) {
            return Optional.empty();
        }
        SharedSheet read = new SharedSheet(
                List.of(Objects.requireNonNull(factory.getStylesheet(own)), parsed(factory, rules)),
                new ElementKind(CascadedStyle.emptyCascadedStyle));
        if (KNOWN.size() >= MOST) {
            KNOWN.clear();
        }
        KNOWN.put(rules, read);
        return Optional.of(read);
    }

    static Stylesheet parsed(StylesheetFactoryImpl factory, String rules) {
        return factory.parse(new StringReader(rules), "the page's style", StylesheetInfo.Origin.AUTHOR);
    }
}
