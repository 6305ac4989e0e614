package icequill.ledger.papers;

import icequill.ledger.find.FindWords;
import icequill.ledger.find.Finder;
import icequill.ledger.find.PaperFilter;
import icequill.ledger.store.Minor;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** The issued papers. */
public final class Papers {

    private static final String COLUMNS = """
            SELECT p.number, p.kind, p.office, p.year, p.position, p.dated, p.due, p.issued_at, p.customer_id, p.site_id,
                p.visit_id, p.agreement, p.corrects, p.replaces, p.currency, p.gross_minor, p.rates_version, p.pdf_hash,
                p.previous_seal, p.seal, w.text AS whereabouts
            FROM paper p JOIN whereabouts w ON w.id = p.whereabouts_id
            """;

    private static final int FETCHED = 200;

    private final Handle handle;
    private final PaperFiles files;

    private record Row(String number, PaperRows.Run run, int position, LocalDate dated, Optional<LocalDate> due,
            Instant issuedAt, Origin origin, Optional<Gross> gross, String whereabouts, String ratesVersion,
            String pdfHash, String previousSeal, String seal) {}

    private record Gross(String currency, long grossMinor) {}

    public Papers(Handle handle, PaperFiles files) {
        this.handle = handle;
        this.files = files;
    }

    /** The paper of that number, exactly as it is printed; a problem names the nearest way to it. */
    public Validated<IssuedPaper> show(String number) {
        return byNumber(handle, number).map(Validated::valid).orElseGet(() -> Validated.invalid(new Problem(
                Code.UNKNOWN_NAME, Place.NOWHERE, "no paper \"" + number + "\" was issued",
                "find it by customer, store, address, purchase order, serial, amount or date")));
    }

    /** The full data of a paper, as it was given when it was issued. */
    public Validated<String> data(String number) {
        return show(number).map(paper -> handle.createQuery("SELECT data FROM paper WHERE number = :number")
                .bind("number", paper.number()).mapTo(String.class).one());
    }

    /** The PDF of a paper, the very bytes that were issued; a problem when the file is gone or was changed. */
    public Validated<Pdf> pdf(String number) {
        return show(number).then(paper -> {
            Place place = Place.ofFile(files.place(paper.series(), number).toString());
            try {
                Pdf pdf = Pdf.of(files.read(paper.series(), number, paper.pdfHash()));
                return pdf.hash().equals(paper.pdfHash())
                        ? Validated.valid(pdf)
                        : Validated.invalid(
                                new Problem(Code.BOOK_DAMAGED, place, "the file was changed after it was issued",
                                        "the file from a backup"));
            } catch (IOException gone) {
                return Validated.invalid(new Problem(Code.BOOK_DAMAGED, place, "the file of " + number + " is gone",
                        "the file from a backup"));
            }
        });
    }

    /** Where the PDF of a paper lies, or has to. */
    public Path file(IssuedPaper paper) {
        return files.place(paper.series(), paper.number());
    }

    /**
     * The papers that every word of the text is found in, the newest first: number, customer, store, address, purchase order, serial,
     * amount ({@code 1250.00}) or day ({@code 2026-05-14}). Words of customer, store and address may be cut short.
     *
     * @param filter what they are to be like besides; all such are found by a text without words
     * @param most how many at most, from 1
     */
    public List<IssuedPaper> find(String text, PaperFilter filter, int most) {
        List<Long> ids = new Finder(handle, most, filter).find(FindWords.ofQuestion(text));
        return ids.isEmpty()
                ? List.of()
                : handle.createQuery(COLUMNS + "WHERE p.id IN (<ids>) ORDER BY p.id DESC").bindList("ids", ids)
                        .mapTo(Row.class).map(row -> paper(handle, row)).list();
    }

    /** The papers that have a position in their series, in the order of issue. */
    public List<IssuedPaper> at(int position) {
        return handle
                .createQuery(COLUMNS + "WHERE p.position = :position AND p.id IN"
                        + " (SELECT paper_id FROM paper_word WHERE word = :word) ORDER BY p.id")
                .bind("position", position).bind("word", String.valueOf(position)).mapTo(Row.class)
                .map(row -> paper(handle, row))
                .list();
    }

    /** The credit notes of an invoice, in the order of issue. */
    public List<IssuedPaper> creditsOf(String number) {
        return by("p.corrects", number);
    }

    /** The invoices that were issued in the place of another. */
    public List<IssuedPaper> replacing(String number) {
        return by("p.replaces", number);
    }

    /** What was issued for a visit, in the order of issue. */
    public List<IssuedPaper> ofVisit(String visit) {
        return handle.createQuery(COLUMNS + "WHERE p.visit_id = :visit OR p.number IN"
                + " (SELECT number FROM paper_further_visit WHERE visit_id = :visit) ORDER BY p.id")
                .bind("visit", visit)
                .mapTo(Row.class).map(row -> paper(handle, row)).list();
    }

    /** The same for many visits; those that nothing was issued for are not among them. */
    public Map<String, List<IssuedPaper>> ofVisits(List<String> visits) {
        Map<String, List<IssuedPaper>> papers = new HashMap<>();
        for (int from = 0; from < visits.size(); from += FETCHED) {
            List<String> some = visits.subList(from, Math.min(visits.size(), from + FETCHED));
            handle.createQuery(COLUMNS + "WHERE p.visit_id IN (<visits>) OR p.number IN"
                    + " (SELECT number FROM paper_further_visit WHERE visit_id IN (<visits>)) ORDER BY p.id")
                    .bindList("visits", some).mapTo(Row.class).map(row -> paper(handle, row)).forEach(paper -> Stream
                            .concat(paper.origin().visit().stream(),
                                    paper.origin().further().stream().map(Origin.At::visit))
                            .filter(some::contains)
                            .forEach(visit -> papers.computeIfAbsent(visit, none -> new ArrayList<>()).add(paper)));
        }
        return papers;
    }

    /** What was issued for a customer, and for those who were merged into him, in the order of issue. */
    public List<IssuedPaper> ofCustomer(String customer) {
        return handle.createQuery(COLUMNS + "WHERE p.customer_id = :id OR p.customer_id IN"
                + " (SELECT customer_id FROM customer_merged WHERE into_id = :id) ORDER BY p.id").bind("id", customer)
                .mapTo(Row.class).map(row -> paper(handle, row)).list();
    }

    /** What was issued under an agreement, in the order of issue. */
    public List<IssuedPaper> ofAgreement(String number) {
        return by("p.agreement", number);
    }

    /** The latest day that a paper of the series bears. */
    public Optional<LocalDate> newest(Series series) {
        return handle
                .createQuery("SELECT max(dated) FROM paper WHERE kind = :kind AND office = :office AND year = :year")
                .bind("kind", series.kind().name()).bind("office", series.office()).bind("year", series.year())
                .mapTo(String.class).findOne().map(LocalDate::parse);
    }

    /** Why a paper bears an earlier day than the one before it; empty where it does not. */
    public Optional<String> backdated(String number) {
        return handle.createQuery("SELECT b.reason FROM paper_backdated b JOIN paper p ON p.id = b.paper_id"
                + " WHERE p.number = :number").bind("number", number).mapTo(String.class).findOne();
    }

    /** All of them, in the order of issue, one after the other. */
    public void each(Consumer<IssuedPaper> reader) {
        handle.createQuery(COLUMNS + "ORDER BY p.id").setFetchSize(FETCHED).mapTo(Row.class)
                .map(row -> paper(handle, row))
                .forEach(reader);
    }

    static Optional<IssuedPaper> byNumber(Handle handle, String number) {
        return handle.createQuery(COLUMNS + "WHERE p.number = :number").bind("number", number)
                .mapTo(Row.class).map(row -> paper(handle, row))
                .findOne();
    }

    private List<IssuedPaper> by(String column, String value) {
        return handle.createQuery(COLUMNS + "WHERE " + column + " = :value ORDER BY p.id").bind("value", value)
                .mapTo(Row.class).map(row -> paper(handle, row)).list();
    }

    private static IssuedPaper paper(Handle handle, Row row) {
        Series series = row.run().of(row.number());
        return new IssuedPaper(row.number(), series, row.position(), row.dated(), row.due(), row.issuedAt(),
                series.kind() == PaperKind.INVOICE && row.origin().visit().isPresent()
                        ? row.origin().with(PaperRows.further(handle, row.number()))
                        : row.origin(),
                row.gross().map(gross -> Minor.stored(gross.grossMinor(), gross.currency())), row.whereabouts(),
                row.ratesVersion(), row.pdfHash(), row.previousSeal(), row.seal());
    }
}
