package icequill.cli.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks long lines of text between words; what follows stands a little further in than its beginning. */
public final class Paragraph {

    /** Longer lines are hard to read. */
    private static final int WIDEST = 100;
    private static final int HANGING = 4;
    private static final Pattern BLANK = Pattern.compile(" +");

    private Paragraph() {
    }

    /** The lines of one text, which keeps its indentation. */
    public static List<String> lines(String text) {
        String shown = PlainText.line(text);
        int indent = shown.length() - shown.stripLeading().length();
        List<String> lines = new ArrayList<>();
        int width = Math.min(WIDEST, Terminal.columns());
        StringBuilder line = new StringBuilder(" ".repeat(indent));
        int begun = line.length();
        for (String word : BLANK.splitAsStream(shown.strip()).toList()) {
            if (line.length() > begun && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line = new StringBuilder(" ".repeat(indent + HANGING));
                begun = line.length();
            }
            line.append(line.length() > begun ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
