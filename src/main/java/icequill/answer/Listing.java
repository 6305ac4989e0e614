package icequill.answer;

import java.util.List;
import java.util.Locale;

/** Entries of the book, which the screen shows as a table. */
public interface Listing {

    /** The heads of the columns. */
    List<String> head();

    /** As many cells each as the head has. */
    List<List<String>> rows();

    /** Whether a row holds a text somewhere, in capitals or not. */
    static boolean holds(List<String> row, String text) {
        String wanted = text.toLowerCase(Locale.ROOT);
        return row.stream().anyMatch(cell -> cell.toLowerCase(Locale.ROOT).contains(wanted));
    }
}
