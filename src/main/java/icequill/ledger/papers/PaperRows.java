package icequill.ledger.papers;

import icequill.ledger.store.Cells;
import icequill.ledger.store.DamagedRow;
import icequill.ledger.store.RecordRow;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** Reads papers as their rows say them. */
public final class PaperRows {

    private static final String SELECT = """
            SELECT p.id, number, kind, office, year, position, dated, due, issued_at, customer_id, site_id, visit_id,
                agreement, corrects, replaces, currency, lines_minor, net_minor, tax_minor, gross_minor, rates_version,
                data, pdf_hash, previous_seal, seal, whereabouts_id,
                coalesce(w.text, '') AS place
            FROM paper p LEFT JOIN whereabouts w ON w.id = p.whereabouts_id
            """;

    /** In the data of papers that bill several visits. */
    private static final String OF_SEVERAL = "\"is\":\"CombinedInvoice\"";
    /** Rows that are fetched at once from a server. */
    private static final int FETCHED = 200;

    /** What stands in a row. */
    public sealed interface Found {}

    /**
     * A row, and the seal that stands in it.
     *
     * @param seal as stored, which fits the row unless one of the two was changed
     */
    public record Sealed(PaperRow row, String seal) implements Found {}

    /** A row that holds what is no paper. */
    public record Unreadable(String number, String why) implements Found {}

    /** Of which series a paper is, but for the letters. */
    record Run(String kind, String office, String year) {

        Series of(String number) {
            return Series.stored(kind, Series.lettersOf(number), office, year);
        }
    }

    private record FileOf(String number, String pdfHash) {}

    private PaperRows() {
    }

    /** What is done with each file. */
    @FunctionalInterface
    public interface FileWork {
        void accept(String number, String hash) throws IOException;
    }

    /** The number and the file's hash of all papers of a series, by position. */
    public static void eachFile(Handle handle, Series series, FileWork work) {
        try (Stream<FileOf> rows = handle.createQuery("SELECT number, pdf_hash FROM paper"
                + " WHERE kind = :kind AND office = :office AND year = :year ORDER BY position")
                .bind("kind", series.kind().name()).bind("office", series.office()).bind("year", series.year())
                .setFetchSize(FETCHED)
                .mapTo(FileOf.class).stream()) {
            rows.forEach(row -> {
                try {
                    work.accept(row.number(), row.pdfHash());
                } catch (IOException failed) {
                    throw new UncheckedIOException(failed);
                }
            });
        }
    }

    /** All papers, one after another, by series and position. */
    public static void each(Handle handle, Consumer<Found> work) {
        try (Stream<Found> rows = handle.createQuery(SELECT + "ORDER BY kind, office, year, position")
                .setFetchSize(FETCHED).map((row, context) -> found(handle, RecordRow.cells(row, context))).stream()) {
            rows.forEach(work);
        }
    }

    private static Found found(Handle handle, Cells row) {
        try {
            Sealed sealed = RecordRow.of(Sealed.class).read(row);
            return new Sealed(whole(handle, sealed.row()), sealed.seal());
        } catch (DamagedRow damaged) {
            return new Unreadable(Objects.requireNonNullElse(row.text("number"), "a paper without a number"),
                    damaged.getMessage());
        }
    }

    public static Optional<PaperRow> byNumber(Handle handle, String number) {
        return handle.createQuery(SELECT + "WHERE number = :number").bind("number", number)
                .mapTo(PaperRow.class).findOne().map(row -> whole(handle, row));
    }

    public static Optional<Series> seriesOf(Handle handle, String number) {
        return handle.createQuery("SELECT kind, office, year FROM paper WHERE number = :number").bind("number", number)
                .mapTo(Run.class).findOne().map(run -> run.of(number));
    }

    /** A backup of an earlier version has no table of further visits, nor a paper that could have any. */
    private static PaperRow whole(Handle handle, PaperRow row) {
        return row.with(row.data().contains(OF_SEVERAL) ? further(handle, row.number()) : List.of(),
                handle.createQuery("SELECT charge_class, outcome, text, net_minor, base_minor FROM paper_line"
                        + " WHERE paper_id = :id ORDER BY position").bind("id", row.id()).mapTo(PaperRow.Line.class)
                        .list());
    }

    /** The visits that are billed with a paper's first. */
    static List<Origin.At> further(Handle handle, String number) {
        return handle
                .createQuery(
                        "SELECT visit_id, site_id FROM paper_further_visit WHERE number = :number ORDER BY position")
                .bind("number", number).mapTo(Origin.At.class).list();
    }
}
