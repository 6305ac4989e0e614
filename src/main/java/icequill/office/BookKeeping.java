package icequill.office;

import icequill.document.MaintenanceQuote;
import icequill.document.PricedPaper;
import icequill.files.PaperJson;
import icequill.ledger.AuditReport;
import icequill.ledger.Book;
import icequill.ledger.BookPlace;
import icequill.ledger.PaperReader;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;

/** The office that looks after the book itself: audits, backups, exports. */
public final class BookKeeping {

    private final ShopBook book;

    private BookKeeping(ShopBook book) {
        this.book = book;
    }

    public static BookKeeping of(Path folder, Clock clock) {
        return new BookKeeping(ShopBook.of(folder, clock));
    }

    /**
     * Goes through the whole book.
     *
     * @param progress is told how many papers were looked at, now and then
     */
    public Checked<AuditSheet> audit(LongConsumer progress) {
        return book.look(open -> open.audit(BookKeeping::read, progress)).map(AuditSheet::of);
    }

    /**
     * Writes the whole book into one file; others may go on working.
     *
     * @param file must not exist yet
     */
    public Checked<AuditSheet> backup(Path file, LongConsumer progress) {
        return book.look(open -> open.backup(file, progress))
                .map(report -> AuditSheet.of(new AuditReport(report.papers(), report.heads(), report.findings())));
    }

    /** Makes the shop's book out of a backup; there must be no book yet. */
    public Checked<AuditSheet> restore(Path file, LongConsumer progress) {
        BookPlace place = book.place();
        if (place instanceof BookPlace.InFile && book.exists()) {
            return Checked.faulty(new Problem(Code.ALREADY_EXISTS, Place.ofFile(place.text()),
                    "this shop has a book already",
                    "a shop folder without one: move folders book and papers/issued away"));
        }
        return Book.restore(file, place, BookKeeping::read, progress).map(AuditSheet::of);
    }

    /**
     * Writes everything as JSON.
     *
     * @param replace whether an existing file may be replaced
     */
    public Checked<Exported> export(Path file, boolean replace, LongConsumer progress) {
        return book.look(open -> open.read(reading -> new Export(reading, progress).everything(file, replace)));
    }

    /** Writes the list of papers as CSV. */
    public Checked<Exported> papers(Path file, boolean replace, LongConsumer progress) {
        return book.look(open -> open.read(reading -> new Export(reading, progress).papers(file, replace)));
    }

    /** What a paper's data says of it, for an audit. */
    private static Checked<PaperReader.Read> read(String json) {
        return PaperJson.read(json, "book").then(paper -> switch (paper) {
        case PricedPaper priced -> Checked.sound(new PaperReader.Read(priced.number(), priced.date(),
                Optional.of(PaperFacts.sums(priced)), PaperFacts.taxes(priced)));
        case MaintenanceQuote quote ->
            Checked.sound(new PaperReader.Read(quote.number(), quote.date(), Optional.empty(), List.of()));
        default -> Checked.faulty(new Problem(Code.BOOK_DAMAGED, Place.NOWHERE,
                "a kind of paper that is not issued", "invoices, credit notes and quotes"));
        });
    }
}
