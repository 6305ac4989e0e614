package icequill.render.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.openpdf.text.pdf.BaseFont;
import org.xhtmlrenderer.pdf.ITextFontResolver;

/**
 * The fonts that papers are set in, embedded as subsets: one family, and a second one for the characters that the first
 * does not have.
 */
public final class Fonts {

    static final String FAMILY = "Liberation Sans";
    public static final String FALLBACK = "DejaVu Sans";

    /** Resources of openpdf-fonts-extra. */
    private static final List<String> FILES = Stream.of("Regular", "Bold", "Italic", "BoldItalic")
            .map(face -> "liberation/LiberationSans-" + face + ".ttf").toList();
    /** Resources of jasperreports-fonts. */
    private static final List<String> FALLBACK_FILES = Stream.of("", "-Bold")
            .map(face -> "net/sf/jasperreports/fonts/dejavu/DejaVuSans" + face + ".ttf").toList();

    private static final ThreadLocal<ITextFontResolver> RESOLVERS = ThreadLocal.withInitial(() -> resolver(FILES));
    private static final ThreadLocal<ITextFontResolver> WIDE_RESOLVERS = ThreadLocal
            .withInitial(() -> resolver(Stream.concat(FILES.stream(), FALLBACK_FILES.stream()).toList()));
    private static final List<BaseFont> FACES = FILES.stream().map(Fonts::font).toList();

    /** Read only when a character asks for it: few papers do. */
    private static final class Fallback {
        private static final List<BaseFont> FACES = FALLBACK_FILES.stream().map(Fonts::font).toList();
    }

    private Fonts() {
    }

    /**
     * The characters of a text that our fonts cannot draw as they should be, each once, in order; line ends and tabs count as
     * drawable. Scripts that run from right to left are among them: the letters are there, but would stand in the wrong
     * order.
     */
    public static List<Integer> missing(String text) {
        return text.codePoints()
                .filter(point -> !Character.isWhitespace(point)
                        && (isRightToLeft(point) || (!isOurs(point) && !has(Fallback.FACES, point))))
                .distinct().boxed().toList();
    }

    /** Characters named for a person: {@code U+6C37 (氷)}. */
    public static String named(List<Integer> points) {
        return points.stream().map(Fonts::named).collect(Collectors.joining(", "));
    }

    private static String named(int point) {
        String sign = Character.isISOControl(point) ? "" : " (" + Character.toString(point) + ")";
        return "U+" + HexFormat.of().withUpperCase().toHexDigits(point, point > 0xFFFF ? 6 : 4) + sign;
    }

    /** Whether the first family can draw the character in each of its faces. */
    public static boolean isOurs(int point) {
        return Character.isWhitespace(point) || has(FACES, point);
    }

    /** The family that can draw the whole text: the first if it can. */
    public static String familyFor(String text) {
        return text.codePoints().allMatch(Fonts::isOurs) ? FAMILY : FALLBACK;
    }

    /**
     * The fonts, parsed once in each thread: they are costly to parse, and while one is written into a paper no other thread
     * may read from it.
     *
     * @param wide with the second family
     */
    public static ITextFontResolver resolver(boolean wide) {
        return wide ? WIDE_RESOLVERS.get() : RESOLVERS.get();
    }

    private static boolean has(List<BaseFont> faces, int point) {
        return faces.stream().allMatch(face -> face.charExists(point));
    }

    private static boolean isRightToLeft(int point) {
        byte direction = Character.getDirectionality(point);
        return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }

    private static ITextFontResolver resolver(List<String> files) {
        ITextFontResolver resolver = new ITextFontResolver();
        files.forEach(file -> resolver.addFont(font(file), file, null));
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
