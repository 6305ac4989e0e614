package icequill.render.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.openpdf.text.pdf.BaseFont;
import org.xhtmlrenderer.pdf.ITextFontResolver;

/** The fonts that papers are set in, embedded as subsets. A family is read only when a character asks for it: few papers need a second. */
public final class Fonts {

    /** What can be set, for whoever wrote something else. */
    public static final String ALLOWED = "letters of most living scripts, such as Latin, Greek, Cyrillic, Chinese, Japanese, Korean, Thai, "
            + "Devanagari, Hebrew and Arabic, and common signs";

    private static final Set<Character.UnicodeScript> SHAPED = EnumSet.of(Character.UnicodeScript.ARABIC,
            Character.UnicodeScript.BENGALI, Character.UnicodeScript.DEVANAGARI, Character.UnicodeScript.GUJARATI,
            Character.UnicodeScript.GURMUKHI, Character.UnicodeScript.HEBREW, Character.UnicodeScript.KANNADA,
            Character.UnicodeScript.MALAYALAM, Character.UnicodeScript.SINHALA, Character.UnicodeScript.TAMIL,
            Character.UnicodeScript.TELUGU, Character.UnicodeScript.THAI);
    /** Say how letters beside them join. */
    private static final Set<Integer> JOINERS = Set.of(0x200C, 0x200D);

    private static final Map<Integer, Optional<Family>> FAMILIES = new ConcurrentHashMap<>();
    private static final Map<Family, List<BaseFont>> FACES = new ConcurrentHashMap<>();
    private static final ThreadLocal<Map<Set<Family>, ITextFontResolver>> RESOLVERS = ThreadLocal
            .withInitial(HashMap::new);
    private static final ThreadLocal<Map<Family, List<BaseFont>>> SETTING = ThreadLocal.withInitial(HashMap::new);

    private Fonts() {
    }

    /**
     * The characters of a text that our fonts cannot draw as they should be, each once, in order; line ends and tabs count as drawable.
     */
    public static List<Integer> missing(String text) {
        return text.codePoints().filter(point -> of(point).isEmpty()).distinct().boxed().toList();
    }

    /** Characters named for a person: {@code U+1F9CA (...)}. */
    public static String named(List<Integer> points) {
        return points.stream().map(Fonts::named).collect(Collectors.joining(", "));
    }

    private static String named(int point) {
        String sign = Character.isISOControl(point) ? "" : " (" + Character.toString(point) + ")";
        return "U+" + HexFormat.of().withUpperCase().toHexDigits(point, point > 0xFFFF ? 6 : 4) + sign;
    }

    /** The family that a character is set in, which has it in each of its faces; empty where none can draw it as it should be. */
    public static Optional<Family> of(int point) {
        return FAMILIES.computeIfAbsent(point, Fonts::lookedUp);
    }

    private static Optional<Family> lookedUp(int point) {
        if (JOINERS.contains(point) || SHAPED.contains(Character.UnicodeScript.of(point))) {
            return Optional.of(Family.SHAPED).filter(family -> has(family, point));
        }
        if (Character.isWhitespace(point)) {
            return Optional.of(Family.FIRST);
        }
        return isRightToLeft(point)
                ? Optional.empty()
                : Arrays.stream(Family.values()).filter(family -> has(family, point)).findFirst();
    }

    /** The family that can draw the whole text: the first that can. */
    public static Family familyFor(String text) {
        boolean shaped = text.codePoints().anyMatch(point -> of(point).filter(Family.SHAPED::equals).isPresent());
        return shaped
                ? Family.SHAPED
                : Arrays.stream(Family.values())
                        .filter(family -> text.codePoints()
                                .allMatch(point -> Character.isWhitespace(point) || has(family, point)))
                        .findFirst().orElse(Family.SIGNS);
    }

    /** Whether a font is the one whose texts are shaped. */
    public static boolean isShaped(BaseFont font) {
        return faces(Family.SHAPED, SETTING.get()).contains(font);
    }

    /**
     * The fonts, parsed once in each thread: they are costly to parse, and while one is written into a paper no other thread
     * may read from it.
     *
     * @param families besides the first
     */
    public static ITextFontResolver resolver(Set<Family> families) {
        Set<Family> all = EnumSet.of(Family.FIRST);
        all.addAll(families);
        return RESOLVERS.get().computeIfAbsent(all, Fonts::ofFamilies);
    }

    private static ITextFontResolver ofFamilies(Set<Family> families) {
        ITextFontResolver resolver = new ITextFontResolver();
        for (Family family : families) {
            List<BaseFont> faces = faces(family, SETTING.get());
            for (int i = 0; i < faces.size(); i++) {
                resolver.addFont(faces.get(i), family.files().get(i), family.style());
            }
        }
        return resolver;
    }

    private static boolean has(Family family, int point) {
        return faces(family, FACES).stream().allMatch(face -> face.charExists(point));
    }

    private static List<BaseFont> faces(Family family, Map<Family, List<BaseFont>> known) {
        return known.computeIfAbsent(family, read -> read.files().stream().map(Fonts::font).toList());
    }

    private static boolean isRightToLeft(int point) {
        byte direction = Character.getDirectionality(point);
        return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
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

    static byte[] read(String file) {
        try (InputStream stream = Fonts.class.getResourceAsStream("/" + file)) {
            return Objects.requireNonNull(stream, file).readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(file, unreadable);
        }
    }
}
