package icequill.cli.terminal;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.Locale;

/**
 * Shows signs that a terminal would obey (escapes, bells, changes of direction) as {@code \}{@code u001b}, so that no name in a
 * file can color the screen, move the cursor or turn an amount around. Within JSON the same means the sign itself.
 */
public final class PlainText extends FilterWriter {

    private PlainText(Writer out) {
        super(out);
    }

    /** A printer before another one that shows them. */
    public static PrintWriter before(PrintWriter out) {
        return new PrintWriter(new PlainText(out), true);
    }

    /** A text that is to stay on its line. */
    static String line(String text) {
        return text.codePoints().anyMatch(sign -> isObeyed(sign) || isBreak(sign))
                ? text.chars().collect(StringBuilder::new,
                        (shown, sign) -> append(shown, sign, isObeyed(sign) || isBreak(sign)), StringBuilder::append)
                        .toString()
                : text;
    }

    @Override
    public void write(int sign) throws IOException {
        write(String.valueOf((char) sign), 0, 1);
    }

    @Override
    public void write(char[] signs, int from, int count) throws IOException {
        write(new String(signs, from, count), 0, count);
    }

    @Override
    public void write(String text, int from, int count) throws IOException {
        StringBuilder shown = new StringBuilder(count);
        for (int i = from; i < from + count; i++) {
            char sign = text.charAt(i);
            boolean endsLine = sign == '\r' && i + 1 < from + count && text.charAt(i + 1) == '\n';
            append(shown, sign, isObeyed(sign) && !endsLine);
        }
        out.write(shown.toString());
    }

    private static void append(StringBuilder shown, int sign, boolean isObeyed) {
        if (isObeyed) {
            shown.append(String.format(Locale.ROOT, "\\u%04x", sign));
        } else {
            shown.append((char) sign);
        }
    }

    private static boolean isBreak(int sign) {
        return sign == '\n' || sign == '\t';
    }

    private static boolean isObeyed(int sign) {
        return (Character.isISOControl(sign) && !isBreak(sign)) || turnsDirection(sign)
                || Character.getType(sign) == Character.LINE_SEPARATOR
                || Character.getType(sign) == Character.PARAGRAPH_SEPARATOR;
    }

    /** By the Unicode standard, annex 9 "Bidirectional Algorithm". */
    private static boolean turnsDirection(int sign) {
        return switch (Character.getDirectionality(sign)) {
        case Character.DIRECTIONALITY_LEFT_TO_RIGHT_EMBEDDING, Character.DIRECTIONALITY_LEFT_TO_RIGHT_OVERRIDE,
                Character.DIRECTIONALITY_RIGHT_TO_LEFT_EMBEDDING, Character.DIRECTIONALITY_RIGHT_TO_LEFT_OVERRIDE,
                Character.DIRECTIONALITY_POP_DIRECTIONAL_FORMAT, Character.DIRECTIONALITY_LEFT_TO_RIGHT_ISOLATE,
                Character.DIRECTIONALITY_RIGHT_TO_LEFT_ISOLATE, Character.DIRECTIONALITY_FIRST_STRONG_ISOLATE,
                Character.DIRECTIONALITY_POP_DIRECTIONAL_ISOLATE ->
            true;
        default -> sign == 0x200e || sign == 0x200f || sign == 0x061c;
        };
    }
}
