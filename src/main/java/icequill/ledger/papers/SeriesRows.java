package icequill.ledger.papers;

import icequill.ledger.store.DamagedRow;
import icequill.ledger.store.Schema;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The rows of the series, as they stand: whoever changed them may have left what is no series. */
public final class SeriesRows {

    /**
     * A row, as texts.
     *
     * @param letters that its numbers begin with
     * @param next the position of the paper to come
     * @param head the seal of the last one
     */
    public record Row(String kind, String letters, String office, String year, String next, String head) {

        /** How far the series has come; empty where its row says no such thing. */
        public Optional<SeriesHead> series() {
            try {
                int position = Integer.parseInt(next);
                return position < 1
                        ? Optional.empty()
                        : Optional.of(new SeriesHead(Series.stored(kind, letters, office, year), position - 1, head));
            } catch (NumberFormatException | DamagedRow none) {
                return Optional.empty();
            }
        }

        private Row lettered(String usual) {
            return new Row(kind, usual, office, year, next, head);
        }
    }

    private SeriesRows() {
    }

    public static List<Row> all(Handle handle) {
        boolean hasLetters = Schema.version(handle) >= Schema.WITH_LETTERS;
        return handle
                .createQuery("SELECT kind, " + (hasLetters ? "letters, " : "'' AS letters, ")
                        + "office, year, next, head FROM series ORDER BY kind, office, year")
                .mapTo(Row.class).map(row -> hasLetters ? row : row.lettered(usualLetters(row.kind()))).list();
    }

    /** Of a kind as a row says it, which may be none. */
    private static String usualLetters(String kind) {
        return Arrays.stream(PaperKind.values()).filter(known -> known.name().equals(kind))
                .map(PaperKind::usualLetters).findFirst().orElse("");
    }

    /** Those that can be read. */
    public static List<SeriesHead> heads(Handle handle) {
        return all(handle).stream().flatMap(row -> row.series().stream()).toList();
    }
}
