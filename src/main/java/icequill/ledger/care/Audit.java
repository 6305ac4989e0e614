package icequill.ledger.care;

import icequill.ledger.papers.KeptPdfs;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.PaperRow;
import icequill.ledger.papers.PaperRows;
import icequill.ledger.papers.Pdf;
import icequill.ledger.papers.Series;
import icequill.ledger.papers.SeriesHead;
import icequill.ledger.papers.SeriesRows;
import icequill.ledger.store.DamagedRow;
import icequill.ledger.store.Dialect;
import icequill.ledger.store.Schema;
import icequill.ledger.store.Seal;
import icequill.ledger.trail.Trail;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;

/**
 * Goes through a book as it is at one moment: tables, series, papers, words, files, trail. Nothing that stands in a row is trusted; what cannot
 * be understood is a finding.
 */
public final class Audit {

    private final Handle handle;
    private final Dialect dialect;
    private final PaperCheck papers;
    private final PaperReader reader;
    private final FileScope files;
    private final LongConsumer progress;
    private final Problems findings = new Problems();
    private final Map<List<String>, Chain> chains = new LinkedHashMap<>();
    private final boolean keepsPdfs;
    private long looked;

    /** @param progress is told how many papers were looked at, now and then */
    public Audit(Handle handle, Dialect dialect, FileScope files, PaperReader reader, LongConsumer progress) {
        this.handle = handle;
        this.dialect = dialect;
        this.papers = new PaperCheck(handle, reader, findings);
        this.reader = reader;
        this.files = files;
        this.progress = progress;
        this.keepsPdfs = dialect.keepsPdfs() && Schema.version(handle) >= Schema.WITH_PDFS;
    }

    public AuditReport report() {
        for (String fault : dialect.faults(handle)) {
            findings.add(Code.BOOK_DAMAGED, Place.NOWHERE, "the database says of itself: " + fault, "a backup");
        }
        List<SeriesRows.Row> series = SeriesRows.all(handle);
        series.stream().flatMap(row -> row.series().stream()).forEach(head -> chain(head.series()));
        Set<Series> counted = chains.values().stream().map(Chain::series).collect(Collectors.toSet());
        try (FilesAhead ahead = new FilesAhead(findings)) {
            PaperRows.each(handle, found -> check(found, ahead));
            ahead.finish();
        }
        series.forEach(this::end);
        // A series whose row is gone would else be passed over.
        chains.values().stream().filter(chain -> !counted.contains(chain.series()))
                .flatMap(chain -> chain.numbers().stream())
                .forEach(number -> findings.add(Code.BOOK_DAMAGED, Place.NOWHERE, number + " belongs to no series",
                        "the series' row from a backup"));
        new LooseRows(handle, findings).check(papers.words());
        understood("credit notes", () -> new CreditCheck(handle, reader, findings).check());
        TrailCheck trail = new TrailCheck(handle, findings);
        int version = Schema.version(handle);
        if (version >= Schema.WITH_RATES) {
            understood("the rates", () -> new RatesCheck(handle, findings).check());
        }
        if (version >= Trail.SINCE) {
            understood("the trail", trail::followSeals);
        }
        // What a backup of an earlier version holds is taken over once its tables have their present form.
        if (version == Schema.NEWEST) {
            understood("the trail", trail::compareEntries);
            understood("payments", new PaymentCheck(handle, findings)::check);
        }
        progress.accept(looked);
        List<SeriesHead> heads = SeriesRows.heads(handle);
        return new AuditReport(looked, heads, trail.head(), findings.list(), heads.stream()
                .filter(head -> !files.isHere(head.series())).map(head -> head.series().text() + " " + head.papers())
                .toList());
    }

    /**
     * The same report with the files that belong to no paper.
     *
     * @param unknown files that had no row at the audit's moment
     * @param later a handle that sees the papers issued since
     */
    public static AuditReport withUnknown(AuditReport report, List<Path> unknown, PaperFiles files, Handle later) {
        FilesCheck again = new FilesCheck(later, files);
        Stream<Problem> stray = unknown.stream().filter(again::isUnknown).map(FilesCheck::finding);
        return report.and(stray.toList());
    }

    private void check(PaperRows.Found found, FilesAhead ahead) {
        looked++;
        if (looked % 100 == 0) {
            progress.accept(looked);
        }
        switch (found) {
        case PaperRows.Sealed sealed -> {
            chain(sealed.row()).ifPresent(chain -> chain.next(sealed));
            understood(sealed.row().number(), () -> {
                papers.check(sealed);
                // A number that is none would lead out of the folder.
                if (isHere(sealed.row())) {
                    Optional<Pdf> kept = kept(sealed.row());
                    ahead.look(() -> lookedThrough(sealed.row(), kept));
                }
            });
        }
        case PaperRows.Unreadable unreadable -> damaged(unreadable.number() + " cannot be read: " + unreadable.why());
        }
    }

    private boolean isHere(PaperRow row) {
        return (files.isHere(row.series()) || keepsPdfs) && row.number().equals(row.series().number(row.position()));
    }

    private List<Problem> lookedThrough(PaperRow row, Optional<Pdf> kept) {
        try {
            return PaperFileCheck.problems(files, reader, row, kept);
        } catch (RuntimeException odd) {
            return List.of(misunderstood(row.number(), odd));
        }
    }

    /** What the book itself has of a paper's file. */
    private Optional<Pdf> kept(PaperRow row) {
        return keepsPdfs ? new KeptPdfs(handle, dialect).of(row.number()) : Optional.empty();
    }

    private static Problem misunderstood(String what, RuntimeException odd) {
        return new Problem(Code.BOOK_DAMAGED, Place.NOWHERE, what + ": its data cannot be understood: " + odd,
                "the row from a backup");
    }

    /** Whoever changes data can bring any code that reads it to any end; that is what is to be found. */
    private void understood(String what, Runnable check) {
        try {
            check.run();
        } catch (JdbiException cut) {
            throw cut;
        } catch (RuntimeException odd) {
            findings.add(misunderstood(what, odd));
        }
    }

    private Optional<Chain> chain(PaperRow row) {
        try {
            return Optional.of(chain(row.series()));
        } catch (DamagedRow none) {
            damaged(row.number() + " belongs to no series: " + none.getMessage());
            return Optional.empty();
        }
    }

    /** That of its kind, office and year, whatever letters a changed number bears. */
    private Chain chain(Series series) {
        return chains.computeIfAbsent(List.of(series.kind().name(), series.office(), String.valueOf(series.year())),
                run -> new Chain(series, findings));
    }

    private void end(SeriesRows.Row row) {
        row.series().ifPresentOrElse(head -> chain(head.series()).end(head),
                () -> damaged("a series cannot be read: " + row));
    }

    private void damaged(String message) {
        findings.add(Code.BOOK_DAMAGED, Place.NOWHERE, message, "the row from a backup");
    }

    /** Follows the numbers and seals of one series. */
    private static final class Chain {

        /** So many missing numbers are named, and the rest counted. */
        private static final int NAMED = 20;

        private final Series series;
        private final Problems findings;
        private final List<String> numbers = new ArrayList<>();
        private int position;
        private String seal = Seal.NONE;

        Chain(Series series, Problems findings) {
            this.series = series;
            this.findings = findings;
        }

        Series series() {
            return series;
        }

        /** Of the papers that were looked at, a few. */
        List<String> numbers() {
            return numbers;
        }

        void next(PaperRows.Sealed sealed) {
            PaperRow row = sealed.row();
            missing(row.position() - 1);
            if (row.position() == position + 1 && !row.previousSeal().equals(seal)) {
                damaged(row.number()
                        + " does not follow the paper before it: one of the two was changed, or put in later");
            }
            if (!row.number().equals(series.number(row.position()))) {
                damaged("paper " + row.position() + " of " + series.text() + " bears the number " + row.number());
            }
            if (!row.isSealedBy(sealed.seal())) {
                damaged(row.number() + " was changed after it was issued: its row does not fit its seal");
            }
            if (numbers.size() < NAMED) {
                numbers.add(row.number());
            }
            position = row.position();
            seal = sealed.seal();
        }

        void end(SeriesHead head) {
            missing(head.papers());
            if (head.papers() < position) {
                damaged("series " + series.text() + " counts " + head.papers() + " papers, but holds " + position);
            }
            if (head.papers() == position && !head.seal().equals(seal)) {
                damaged("the last seal of series " + series.text() + " is not that of its last paper");
            }
        }

        private void missing(int last) {
            for (int number = position + 1; number <= last && number <= position + NAMED; number++) {
                damaged(series.number(number) + " is missing");
            }
            if (last > position + NAMED) {
                damaged(last - position - NAMED + " more of " + series.text() + " are missing");
            }
        }

        private void damaged(String message) {
            findings.add(Code.BOOK_DAMAGED, Place.NOWHERE, message, "the row from a backup");
        }
    }
}
