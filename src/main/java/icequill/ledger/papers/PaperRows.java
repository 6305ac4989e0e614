package icequill.ledger.papers;

import icequill.ledger.store.Column;
import icequill.ledger.store.DamagedRow;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.RowView;

/** Reads papers as their rows say them. */
public final class PaperRows {

    private static final String SELECT = """
            SELECT p.id, number, kind, office, year, position, dated, due, issued_at, customer_id, site_id, visit_id,
                agreement, corrects, replaces, currency, lines_minor, net_minor, tax_minor, gross_minor, rates_version,
                data, pdf_hash, previous_seal, seal, whereabouts_id, w.text AS place
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

    private PaperRows() {
    }

    /** What is done with each file. */
    @FunctionalInterface
    public interface FileWork {
        void accept(String number, String hash) throws IOException;
    }

    /** The number and the file's hash of all papers of a series, by position. */
    public static void eachFile(Handle handle, Series series, FileWork work) {
        try (Stream<String[]> rows = handle.createQuery("SELECT number, pdf_hash FROM paper"
                + " WHERE kind = :kind AND office = :office AND year = :year ORDER BY position")
                .bind("kind", series.kind().name()).bind("office", series.office()).bind("year", series.year())
                .setFetchSize(FETCHED)
                .map(row -> new String[]{Column.text(row, "number"), Column.text(row, "pdf_hash")}).stream()) {
            rows.forEach(row -> {
                try {
                    work.accept(row[0], row[1]);
                } catch (IOException failed) {
                    throw new UncheckedIOException(failed);
                }
            });
        }
    }

    /** All papers, one after another, by series and position. */
    public static void each(Handle handle, Consumer<Found> work) {
        try (Stream<Found> rows = handle.createQuery(SELECT + "ORDER BY kind, office, year, position")
                .setFetchSize(FETCHED).map(row -> found(handle, row)).stream()) {
            rows.forEach(work);
        }
    }

    private static Found found(Handle handle, RowView row) {
        try {
            return new Sealed(read(handle, row), Column.text(row, "seal"));
        } catch (DamagedRow damaged) {
            return new Unreadable(Column.mayBe(row, "number").orElse("a paper without a number"), damaged.getMessage());
        }
    }

    public static Optional<PaperRow> byNumber(Handle handle, String number) {
        return handle.createQuery(SELECT + "WHERE number = :number").bind("number", number)
                .map(row -> read(handle, row)).findOne();
    }

    public static Optional<Series> seriesOf(Handle handle, String number) {
        return handle.createQuery("SELECT kind, office, year FROM paper WHERE number = :number").bind("number", number)
                .map(row -> Series.stored(Column.text(row, "kind"), Series.lettersOf(number),
                        Column.text(row, "office"), Column.text(row, "year")))
                .findOne();
    }

    private static PaperRow read(Handle handle, RowView row) {
        long id = Column.units(row, "id");
        return new PaperRow(id, Column.text(row, "number"), Column.text(row, "kind"), Column.text(row, "office"),
                Column.whole(row, "year"), Column.whole(row, "position"),
                Column.text(row, "dated"), Column.mayBe(row, "due"), Column.text(row, "issued_at"), origin(handle, row),
                sums(row), Column.text(row, "rates_version"), Column.text(row, "data"), Column.text(row, "pdf_hash"),
                Column.text(row, "previous_seal"), Column.units(row, "whereabouts_id"),
                Column.mayBe(row, "place").orElse(""), lines(handle, id));
    }

    /** A backup of an earlier version has no table of further visits, nor a paper that could have any. */
    private static Origin origin(Handle handle, RowView row) {
        Origin origin = origin(row);
        return Column.text(row, "data").contains(OF_SEVERAL)
                ? origin.with(further(handle, Column.text(row, "number")))
                : origin;
    }

    /** But for further visits. */
    static Origin origin(RowView row) {
        return new Origin(Column.mayBe(row, "customer_id"), Column.mayBe(row, "site_id"), Column.mayBe(row, "visit_id"),
                Column.mayBe(row, "agreement"), Column.mayBe(row, "corrects"), Column.mayBe(row, "replaces"));
    }

    /** The visits that are billed with a paper's first. */
    static List<Origin.At> further(Handle handle, String number) {
        return handle
                .createQuery(
                        "SELECT visit_id, site_id FROM paper_further_visit WHERE number = :number ORDER BY position")
                .bind("number", number)
                .map(at -> new Origin.At(Column.text(at, "visit_id"), Column.text(at, "site_id"))).list();
    }

    private static Optional<PaperRow.Amounts> sums(RowView row) {
        return Column.mayBe(row, "currency")
                .map(currency -> new PaperRow.Amounts(currency, Column.units(row, "lines_minor"),
                        Column.units(row, "net_minor"), Column.units(row, "tax_minor"),
                        Column.units(row, "gross_minor")));
    }

    private static List<PaperRow.Line> lines(Handle handle, long id) {
        return handle.createQuery("SELECT charge_class, outcome, text, net_minor, base_minor FROM paper_line"
                + " WHERE paper_id = :id ORDER BY position").bind("id", id)
                .map(line -> new PaperRow.Line(Column.text(line, "charge_class"), Column.text(line, "outcome"),
                        Column.text(line, "text"), Column.units(line, "net_minor"),
                        Column.units(line, "base_minor")))
                .list();
    }
}
