package icequill.render;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import org.openpdf.text.pdf.BaseFont;
import org.xhtmlrenderer.pdf.ITextFontResolver;

/** The fonts that papers are set in: one family, embedded as subsets. */
public final class Fonts {

    /** The files of the family, as resources of openpdf-fonts-extra. */
    private static final List<String> FILES = List.of("liberation/LiberationSans-Regular.ttf",
            "liberation/LiberationSans-Bold.ttf", "liberation/LiberationSans-Italic.ttf",
            "liberation/LiberationSans-BoldItalic.ttf");

    private static final ThreadLocal<ITextFontResolver> RESOLVERS = ThreadLocal.withInitial(Fonts::newResolver);
    private static final BaseFont REGULAR = font(FILES.getFirst());

    private Fonts() {
    }

    /** The characters of a text that our font cannot draw, each once, in order; line ends and tabs count as drawable. */
    public static List<Integer> missing(String text) {
        return text.codePoints().filter(point -> !Character.isWhitespace(point) && !REGULAR.charExists(point))
                .distinct()
                .boxed().toList();
    }

    /**
     * The fonts, parsed once in each thread: they are costly to parse, and while one is written into a paper no other thread
     * may read from it.
     */
    static ITextFontResolver resolver() {
        return RESOLVERS.get();
    }

    private static ITextFontResolver newResolver() {
        ITextFontResolver resolver = new ITextFontResolver();
        FILES.forEach(file -> resolver.addFont(font(file), file, null));
        return resolver;
    }

    private static BaseFont font(String file) {
        try {
            BaseFont font = BaseFont.createFont(file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, read(file), null);
            // An incomplete list of the subset's characters is refused by the archive format; none at all is fine.
            font.setIncludeCidSet(false);
            return font;
        } catch (IOException broken) {
            throw new UncheckedIOException(file, broken);
        }
    }

    private static byte[] read(String file) {
        try (InputStream stream = Fonts.class.getResourceAsStream("/" + file)) {
            return Objects.requireNonNull(stream, file).readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(file, unreadable);
        }
    }
}
