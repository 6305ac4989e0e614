package icequill.mail;

import java.util.regex.Pattern;

/** What may stand in a header: nothing that ends a line or steers whoever shows it, so that nobody writes a header of his own. */
final class OneLine {

    /** What readers take for encoded signs (RFC 2047, section 2), and thus for others than stand there. */
    private static final Pattern ENCODED = Pattern.compile("=[?][^? ]+[?][bBqQ][?]");

    private OneLine() {
    }

    /** Whether a text has no control character, no separator of lines, no half of a character, and nothing that means something else. */
    static boolean is(String text) {
        return text.codePoints().noneMatch(OneLine::breaks) && !ENCODED.matcher(text).find();
    }

    /** For show: whatever breaks the line is a space, many spaces are one, and what is longer than the most characters is cut. */
    static String shown(String text, int most) {
        StringBuilder line = new StringBuilder();
        text.codePoints().forEach(point -> line.appendCodePoint(breaks(point) ? ' ' : point));
        String plain = line.toString().replaceAll(" +", " ").strip();
        return plain.length() <= most ? plain : plain.substring(0, plain.offsetByCodePoints(0, most - 1)) + "…";
    }

    static boolean breaks(int point) {
        return switch (Character.getType(point)) {
        case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE -> true;
        default -> false;
        };
    }
}
