package icequill.answer;

import icequill.ledger.find.FindWords;
import java.util.List;
import java.util.stream.Stream;

/** Entries of the book, which the screen shows as a table. */
public interface Listing {

    /** The heads of the columns. */
    List<String> head();

    /** As many cells each as the head has. */
    List<List<String>> rows();

    /** Whether a row holds every word of a text somewhere, in capitals or not, with its accents or without. */
    static boolean holds(List<String> row, String text) {
        List<String> cells = row.stream().map(FindWords::plain).toList();
        return Stream.of(FindWords.plain(text).split("\\s+"))
                .allMatch(word -> cells.stream().anyMatch(cell -> cell.contains(word)));
    }
}
