package icequill.render.words;

import java.util.ArrayList;
import java.util.List;

/** A stretch of a text that is set in one family. */
public record FontRun(Family family, String text) {

    /** Part what our papers write side by side, as between a name and a street. */
    private static final String PARTS = ",;:()·–";
    /** End a sentence, on the side to which it runs. */
    private static final String ENDS = ".!?";

    /** The stretches of a text, in order; nothing between them is lost. */
    public static List<FontRun> of(String text) {
        List<FontRun> runs = new ArrayList<>();
        int start = 0;
        while (start < text.length()) {
            Family family = Fonts.of(text.codePointAt(start)).orElse(Family.FIRST);
            int end = isRightToLeft(text.codePointAt(start)) ? endOfRightToLeft(text, start) : end(text, start, family);
            runs.add(new FontRun(family, text.substring(start, end)));
            start = end;
        }
        return runs;
    }

    private static int end(String text, int start, Family family) {
        int end = start;
        while (end < text.length()) {
            int point = text.codePointAt(end);
            boolean joins = end > start && family == Family.SHAPED
                    && (isMark(point) || (point == ' ' && isShaped(text, end + 1)));
            if (isRightToLeft(point) || (!joins && Fonts.of(point).orElse(Family.FIRST) != family)) {
                break;
            }
            end += Character.charCount(point);
        }
        return end;
    }

    private static boolean isShaped(String text, int at) {
        return at < text.length() && Fonts.of(text.codePointAt(at)).filter(Family.SHAPED::equals).isPresent()
                && !isRightToLeft(text.codePointAt(at));
    }

    /** Up to the last letter or digit before a letter that runs the other way: spaces and numbers go with the words around them. */
    private static int endOfRightToLeft(String text, int start) {
        int end = start;
        for (int at = start; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            int point = text.codePointAt(at);
            if (Character.getDirectionality(point) == Character.DIRECTIONALITY_LEFT_TO_RIGHT
                    || PARTS.indexOf(point) >= 0) {
                break;
            }
            if (isRightToLeft(point) || isMark(point) || Character.isDigit(point)) {
                end = at + Character.charCount(point);
            }
        }
        while (end < text.length() && ENDS.indexOf(text.charAt(end)) >= 0) {
            end++;
        }
        return end;
    }

    private static boolean isMark(int point) {
        return Character.UnicodeScript.of(point) == Character.UnicodeScript.INHERITED;
    }

    private static boolean isRightToLeft(int point) {
        byte direction = Character.getDirectionality(point);
        return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }
}
