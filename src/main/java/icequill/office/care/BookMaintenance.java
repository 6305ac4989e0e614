package icequill.office.care;

import icequill.answer.AuditSheet;
import icequill.answer.ExportResult;
import icequill.answer.ExportedForms;
import icequill.answer.mail.MailTelling;
import icequill.ledger.Book;
import icequill.ledger.Opening;
import icequill.ledger.care.AuditReport;
import icequill.ledger.care.BackupReport;
import icequill.ledger.papers.PaperReader;
import icequill.office.register.Export;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.LongConsumer;
import java.util.stream.Stream;

/** The office that looks after the book itself: audits, backups, exports. */
public final class BookMaintenance {

    private static final PaperReader READER = new IssuedPaperReader();

    private final ShopBook book;

    private BookMaintenance(ShopBook book) {
        this.book = book;
    }

    public static BookMaintenance of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same with a book that may be held open. */
    public static BookMaintenance of(ShopBook book) {
        return new BookMaintenance(book);
    }

    /**
     * Goes through the whole book.
     *
     * @param against what was kept elsewhere: files of backups, PDFs or seals, or lines of seals; may be empty
     * @param progress is told how many papers were looked at, now and then
     */
    public Validated<AuditSheet> audit(List<String> against, LongConsumer progress) {
        return book.look(open -> open.audit(READER, book.office(), progress).then(report -> open
                .against(against, READER).map(differing -> AuditSheet.of(report.and(differing)))));
    }

    /**
     * Writes the whole book into one file; others may go on working.
     *
     * @param file must not exist yet
     */
    public Validated<AuditSheet> backup(Path file, LongConsumer progress) {
        return book.look(open -> open.backup(file, READER, book.office(), progress)).map(BookMaintenance::told);
    }

    /** Tries whether a backup can be restored; changes nothing. */
    public static Validated<AuditSheet> verify(Path file, LongConsumer progress) {
        return Book.verify(file, READER, progress).map(AuditSheet::of);
    }

    private static AuditSheet told(BackupReport report) {
        Stream<Problem> rescue = report.isRestorable()
                ? Stream.empty()
                : Stream.of(new Problem(Code.BOOK_DAMAGED, Place.ofFile(report.file().toString()),
                        "this backup is for rescue only: the book is damaged, so no restore will take it",
                        "what follows mended first, and another backup"));
        return AuditSheet.of(new AuditReport(report.papers(), report.heads(), report.trail(),
                Stream.concat(rescue, report.findings().stream()).toList(), List.of()));
    }

    /** Makes the shop's book out of a backup; there must be no book yet. */
    public Validated<AuditSheet> restore(Path file, LongConsumer progress) {
        return Book.restore(file, book.place(), READER, progress).map(AuditSheet::of);
    }

    /** Takes into the shop's book the papers beside it that it lacks, out of their PDFs. */
    public Validated<AuditSheet> restoreFromPapers(LongConsumer progress) {
        return Opening.despitePapers(book.place(), book.clock(), book.author()).then(opened -> {
            try (opened) {
                return opened.takeFromPapers(READER, book.office(), progress).map(AuditSheet::of);
            }
        });
    }

    /**
     * Writes everything as JSON.
     *
     * @param replace whether an existing file may be replaced
     */
    public Validated<ExportResult> export(Path file, boolean replace, LongConsumer progress) {
        return book.look(open -> open
                .read(reading -> new Export(reading, MailTelling.of(book), progress).everything(file, replace)));
    }

    /**
     * What the book holds, as forms.
     *
     * @param names of what is asked for, ids and numbers; all where there are none
     */
    public Validated<ExportedForms> forms(List<String> names) {
        return book.look(open -> open.read(reading -> new Export(reading, MailTelling.of(book), count -> {
        }).forms(names)));
    }

    /** Writes the list of papers as CSV. */
    public Validated<ExportResult> papers(Path file, boolean replace, LongConsumer progress) {
        return book.look(open -> open
                .read(reading -> new Export(reading, MailTelling.of(book), progress).papers(file, replace)));
    }
}
