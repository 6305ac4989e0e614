package icequill.answer;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Entries of the book, which the screen shows as a table. */
public interface Listing {

    Pattern BLANKS = Pattern.compile("\\s+");
    Pattern ACCENTS = Pattern.compile("\\p{M}");

    /** The heads of the columns. */
    List<String> head();

    /** As many cells each as the head has. */
    List<List<String>> rows();

    /** Whether a row holds every word of a text somewhere, in capitals or not, with its accents or without. */
    static boolean holds(List<String> row, String text) {
        List<String> cells = row.stream().map(Listing::plain).toList();
        return BLANKS.splitAsStream(plain(text)).allMatch(word -> cells.stream().anyMatch(cell -> cell.contains(word)));
    }

    private static String plain(String text) {
        return ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("").toLowerCase(Locale.ROOT);
    }
}
