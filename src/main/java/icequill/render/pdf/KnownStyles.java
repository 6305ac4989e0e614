package icequill.render.pdf;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xhtmlrenderer.context.StandardAttributeResolver;
import org.xhtmlrenderer.context.StyleReference;
import org.xhtmlrenderer.context.StylesheetFactoryImpl;
import org.xhtmlrenderer.css.extend.lib.DOMTreeResolver;
import org.xhtmlrenderer.css.newmatch.CascadedStyle;
import org.xhtmlrenderer.css.newmatch.Matcher;
import org.xhtmlrenderer.css.newmatch.PageInfo;
import org.xhtmlrenderer.css.sheet.FontFaceRule;
import org.xhtmlrenderer.css.sheet.Stylesheet;
import org.xhtmlrenderer.css.sheet.StylesheetInfo;
import org.xhtmlrenderer.extend.NamespaceHandler;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.extend.UserInterface;
import org.xhtmlrenderer.layout.SharedContext;

/**
 * Finds the styles of a paper's elements among those of earlier papers: to match every rule with every element took a sixth of the
 * printing of an invoice, to read its style sheet a twentieth. A style sheet that asks for more than an element's kind is matched as ever.
 */
final class KnownStyles extends StyleReference {

    private final StylesheetFactoryImpl factory;
    private @Nullable Known known;

    KnownStyles(UserAgentCallback agent) {
        super(agent);
        factory = new StylesheetFactoryImpl(agent);
    }

    @Override
    public void setDocumentContext(SharedContext context, NamespaceHandler handler, Document document,
            UserInterface user) {
        List<StylesheetInfo> written = handler.getStylesheets(document);
        StyleText text = StyleText.of(written.stream().flatMap(info -> info.getContent().stream())
                .collect(Collectors.joining("\n")));
        Optional<SharedSheet> shared = written.stream()
                .allMatch(info -> info.getContent().isPresent() && info.appliesToMedia(context.getMedia()))
                        ? SharedSheet.of(factory, handler.getDefaultStylesheet().orElseThrow(), text.elements())
                        : Optional.empty();
        if (shared.isEmpty()) {
            super.setDocumentContext(context, handler, document, user);
            return;
        }
        SharedSheet sheet = shared.get();
        StandardAttributeResolver attributes = new StandardAttributeResolver(handler,
                context.getUserAgentCallback(), user);
        Function<List<Stylesheet>, Matcher> matcher = sheets -> new Matcher(new DOMTreeResolver(), attributes, factory,
                sheets, context.getMedia());
        known = new Known(sheet, () -> matcher.apply(sheet.rules()),
                matcher.apply(List.of(sheet.rules().getFirst(), SharedSheet.parsed(factory, text.pages()))));
    }

    @Override
    public CascadedStyle getCascadedStyle(@Nullable Element element, boolean again) {
        return known == null || element == null
                ? super.getCascadedStyle(element, again)
                : known.kind(element).style();
    }

    @Override
    public @Nullable CascadedStyle getPseudoElementStyle(Node node, String name) {
        if (known == null) {
            return super.getPseudoElementStyle(node, name);
        }
        Element element = node instanceof Element itself
                ? itself
                : (Element) Objects.requireNonNull(node.getParentNode());
        return known.pseudo(element, name).orElse(null);
    }

    @Override
    public PageInfo getPageStyle(@Nullable String name, String which) {
        return known == null ? super.getPageStyle(name, which) : known.page(name, which);
    }

    @Override
    public List<FontFaceRule> getFontFaceRules() {
        return known == null ? super.getFontFaceRules() : List.of();
    }

    /** One document with a sheet that others share. */
    private static final class Known {

        private final SharedSheet sheet;
        private final Supplier<Matcher> made;
        private final Matcher pages;
        private final IdentityHashMap<Element, ElementKind> kinds = new IdentityHashMap<>();
        private @Nullable Matcher rules;

        /**
         * What is found in a document.
         *
         * @param made of its rules for elements, once there is a kind that no document before had
         * @param pages of its rules of pages
         */
        Known(SharedSheet sheet, Supplier<Matcher> made, Matcher pages) {
            this.sheet = sheet;
            this.made = made;
            this.pages = pages;
        }

        PageInfo page(@Nullable String name, String which) {
            return pages.getPageCascadedStyle(name, which);
        }

        ElementKind kind(Element element) {
            ElementKind before = kinds.get(element);
            if (before != null) {
                return before;
            }
            ElementKind around = element.getParentNode() instanceof Element parent ? kind(parent) : sheet.document();
            ElementKind found = around.of(element, () -> rules().getCascadedStyle(element, false));
            kinds.put(element, found);
            return found;
        }

        Optional<CascadedStyle> pseudo(Element element, String name) {
            return kind(element).pseudo(name,
                    asked -> Optional.ofNullable(rules().getPECascadedStyle(element, asked)));
        }

        private Matcher rules() {
            Matcher known = rules == null ? made.get() : rules;
            rules = known;
            return known;
        }
    }
}
