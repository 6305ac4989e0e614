package icequill.ledger;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.nio.file.Path;
import java.util.List;
import java.util.function.LongConsumer;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** Goes through a book as it is at one moment: tables, series, papers, files. */
final class Audit {

    private final Handle handle;
    private final Dialect dialect;
    private final PaperCheck papers;
    private final PaperReader reader;
    private final LongConsumer progress;
    private final Problems findings = new Problems();
    private long looked;

    /** @param progress is told how many papers were looked at, now and then */
    Audit(Handle handle, Dialect dialect, PaperFiles files, PaperReader reader, LongConsumer progress) {
        this.handle = handle;
        this.dialect = dialect;
        this.papers = new PaperCheck(files, reader, findings);
        this.reader = reader;
        this.progress = progress;
    }

    AuditReport report() {
        for (String fault : dialect.faults(handle)) {
            findings.add(Code.BOOK_DAMAGED, Place.NOWHERE, "the database says of itself: " + fault, "a backup");
        }
        List<SeriesHead> heads = SeriesRows.heads(handle);
        heads.forEach(this::checkSeries);
        // A series whose row is gone would else be passed over.
        handle.createQuery("""
                SELECT number FROM paper p WHERE NOT EXISTS (SELECT 1 FROM series s
                    WHERE s.kind = p.kind AND s.office = p.office AND s.year = p.year) ORDER BY id""")
                .mapTo(String.class).forEach(number -> findings.add(Code.BOOK_DAMAGED, Place.NOWHERE,
                        number + " belongs to no series", "the series' row from a backup"));
        new CreditCheck(handle, reader, findings).check();
        progress.accept(looked);
        return new AuditReport(looked, heads, findings.list());
    }

    /**
     * The same report with the files that belong to no paper.
     *
     * @param unknown files that had no row at the audit's moment
     * @param later a handle that sees the papers issued since
     */
    static AuditReport withUnknown(AuditReport report, List<Path> unknown, PaperFiles files, Handle later) {
        FilesCheck again = new FilesCheck(later, files);
        Stream<Problem> stray = unknown.stream().filter(again::isUnknown).map(FilesCheck::finding);
        return new AuditReport(report.papers(), report.heads(),
                Stream.concat(report.findings().stream(), stray).toList());
    }

    private void checkSeries(SeriesHead head) {
        Series series = head.series();
        Chain chain = new Chain(series, findings);
        PaperRows.each(handle, series, row -> {
            chain.next(row);
            papers.check(row.row());
            looked++;
            if (looked % 100 == 0) {
                progress.accept(looked);
            }
        });
        chain.end(head);
    }

    /** Follows the numbers and seals of one series. */
    private static final class Chain {

        private final Series series;
        private final Problems findings;
        private int position;
        private String seal = Seal.NONE;

        Chain(Series series, Problems findings) {
            this.series = series;
            this.findings = findings;
        }

        void next(PaperRows.Sealed sealed) {
            PaperRow row = sealed.row();
            for (int missing = position + 1; missing < row.position(); missing++) {
                damaged(series.number(missing) + " is missing");
            }
            if (row.position() == position + 1 && !row.previousSeal().equals(seal)) {
                damaged(row.number()
                        + " does not follow the paper before it: one of the two was changed, or put in later");
            }
            if (!row.number().equals(series.number(row.position()))) {
                damaged("paper " + row.position() + " of " + series.text() + " bears the number " + row.number());
            }
            if (!row.seal().equals(sealed.seal())) {
                damaged(row.number() + " was changed after it was issued: its row does not fit its seal");
            }
            position = row.position();
            seal = sealed.seal();
        }

        void end(SeriesHead head) {
            for (int missing = position + 1; missing <= head.papers(); missing++) {
                damaged(series.number(missing) + " is missing");
            }
            if (head.papers() < position) {
                damaged("series " + series.text() + " counts " + head.papers() + " papers, but holds " + position);
            }
            if (head.papers() == position && !head.seal().equals(seal)) {
                damaged("the last seal of series " + series.text() + " is not that of its last paper");
            }
        }

        private void damaged(String message) {
            findings.add(Code.BOOK_DAMAGED, Place.NOWHERE, message, "the row from a backup");
        }
    }
}
