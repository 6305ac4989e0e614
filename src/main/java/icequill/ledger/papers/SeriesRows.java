package icequill.ledger.papers;

import icequill.ledger.store.Column;
import icequill.ledger.store.DamagedRow;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The rows of the series, as they stand: whoever changed them may have left what is no series. */
public final class SeriesRows {

    /**
     * A row, as texts.
     *
     * @param next the position of the paper to come
     * @param head the seal of the last one
     */
    public record Row(String kind, String office, String year, String next, String head) {

        /** How far the series has come; empty where its row says no such thing. */
        public Optional<SeriesHead> series() {
            try {
                int position = Column.whole("next", next);
                return position < 1
                        ? Optional.empty()
                        : Optional.of(new SeriesHead(Series.stored(kind, office, year), position - 1, head));
            } catch (DamagedRow none) {
                return Optional.empty();
            }
        }
    }

    private SeriesRows() {
    }

    public static List<Row> all(Handle handle) {
        return handle.createQuery("SELECT kind, office, year, next, head FROM series ORDER BY kind, office, year")
                .map(row -> new Row(Column.text(row, "kind"), Column.text(row, "office"), Column.text(row, "year"),
                        Column.text(row, "next"), Column.text(row, "head")))
                .list();
    }

    /** Those that can be read. */
    public static List<SeriesHead> heads(Handle handle) {
        return all(handle).stream().flatMap(row -> row.series().stream()).toList();
    }
}
