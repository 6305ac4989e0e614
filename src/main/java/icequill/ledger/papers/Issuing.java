package icequill.ledger.papers;

import icequill.files.disk.OwnersOnly;
import icequill.ledger.find.FindWords;
import icequill.ledger.store.BookContext;
import icequill.ledger.store.Flush;
import icequill.ledger.store.Seal;
import icequill.ledger.store.Step;
import icequill.ledger.trail.Subject;
import icequill.ledger.trail.Trail;
import icequill.ledger.trail.TrailEvent;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;

/** Issues papers within one transaction, and moves their files to their places once it is done. */
public final class Issuing {

    private static final Problem LATER = new Problem(Code.NOT_ALLOWED, Place.NOWHERE, "only asked for", "");

    private final Handle handle;
    private final PaperFiles files;
    private final BookContext surroundings;
    private final Trail trail;
    private final KeptPdfs kept;
    private final List<PaperRow> issued = new ArrayList<>();
    private final Problems problems = new Problems();
    private Optional<PrintedAhead> ahead = Optional.empty();

    /** A number that was taken, and the seal of the paper before. */
    private record Taken(Series series, int position, String head, String issuedAt) {}

    private record Next(int position, String letters, String head) {}

    public Issuing(Handle handle, PaperFiles files, BookContext surroundings, Trail trail, KeptPdfs kept) {
        this.handle = handle;
        this.files = files;
        this.surroundings = surroundings;
        this.trail = trail;
        this.kept = kept;
    }

    /** Takes the next number, has the paper printed under it, and stores it. Nothing of it stays when the transaction is undone. */
    public Validated<IssuedPaper> issue(Series series, Origin origin, Printing printing) {
        Optional<PrintedAhead> asking = ahead.filter(PrintedAhead::isAsking);
        if (asking.isPresent()) {
            asking.get().begin(printing, expected(series, asking.get()));
            return Validated.invalid(LATER);
        }
        Optional<Problem> clash = new SeriesBeginning(handle, series).clash();
        if (clash.isPresent()) {
            problems.add(clash.get());
            return Validated.invalid(clash.get());
        }
        Taken taken = take(series);
        step(Step.NUMBER_TAKEN);
        Optional<Problem> issuedBefore = issuedBefore(taken);
        if (issuedBefore.isPresent()) {
            problems.add(issuedBefore.get());
            return Validated.invalid(issuedBefore.get());
        }
        Numbered numbered = new Numbered(taken.series().number(taken.position()), taken.head(), taken.issuedAt());
        Validated<IssuedPaper> paper = ahead.flatMap(papers -> papers.of(numbered))
                .orElseGet(() -> printing.under(numbered)).map(printed -> {
                    step(Step.PRINTED);
                    return stored(taken, numbered, origin, printed);
                });
        problems.addAll(paper.problems());
        return paper;
    }

    /**
     * Does some works one after the other, which issue a paper each at most and change nothing before. First they are asked which paper
     * that would be, so that all are printed at once, as issued when the transaction began.
     *
     * @return what each came to
     */
    public <T> List<Validated<T>> inTurn(List<Supplier<Validated<T>>> works) {
        try (PrintedAhead papers = new PrintedAhead()) {
            ahead = Optional.of(papers);
            done(works, papers);
            papers.asked();
            return done(works, papers);
        } finally {
            ahead = Optional.empty();
        }
    }

    private static <T> List<Validated<T>> done(List<Supplier<Validated<T>>> works, PrintedAhead papers) {
        List<Validated<T>> results = new ArrayList<>();
        for (int i = 0; i < works.size(); i++) {
            papers.turnTo(i);
            results.add(works.get(i).get());
        }
        return results;
    }

    /** The result, unless a paper could not be printed: its number would be missing. */
    public <T> Validated<T> unlessAtFault(T result) {
        return problems.or(() -> result);
    }

    /** Before the transaction is committed: rows must not be on the disk without their files. */
    public void force() {
        try {
            for (PaperRow row : issued) {
                Flush.file(files.unfinished(row.number(), row.pdfHash()));
                step(Step.FILE_FLUSHED);
            }
            if (!issued.isEmpty()) {
                Flush.folder(files.unfinishedFolder());
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** After the transaction. The papers are issued, whatever happens to their files now: those are found, and moved later. */
    public void finish() {
        for (PaperRow row : issued) {
            try {
                files.finish(row.series(), row.number(), row.pdfHash());
                files.seals().note(row.series(), row.position(), row.seal());
            } catch (IOException later) {
                // Moved when the book is next opened, and read from where it is until then.
            }
            step(Step.MOVED);
        }
    }

    /** After the transaction was undone. */
    public void discard() {
        issued.forEach(row -> files.discard(row.number(), row.pdfHash()));
    }

    public void step(Step step) {
        surroundings.watcher().accept(step);
    }

    private Optional<Problem> issuedBefore(Taken taken) {
        try {
            return PapersAhead.taken(files, taken.series(), taken.position(), taken.head());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** A series that has begun keeps its letters. */
    private Taken take(Series series) {
        handle.createUpdate("""
                INSERT INTO series (kind, letters, office, year, next, head)
                VALUES (:kind, :letters, :office, :year, 1, :head) ON CONFLICT (kind, office, year) DO NOTHING""")
                .bind("kind", series.kind().name()).bind("letters", series.letters()).bind("office", series.office())
                .bind("year", series.year()).bind("head", Seal.NONE).execute();
        return handle.createQuery("""
                UPDATE series SET next = next + 1 WHERE kind = :kind AND office = :office AND year = :year
                RETURNING next - 1 AS position, letters, head""").bind("kind", series.kind().name())
                .bind("office", series.office()).bind("year", series.year())
                .mapTo(Next.class)
                .map(next -> taken(series, next))
                .one();
    }

    private Taken taken(Series series, Next next) {
        return new Taken(new Series(series.kind(), next.letters(), series.office(), series.year()), next.position(),
                next.head(), ahead.map(papers -> trail.now()).orElseGet(this::now).toString());
    }

    private Instant now() {
        return surroundings.clock().instant().truncatedTo(ChronoUnit.MILLIS);
    }

    /** What a paper is told that comes after some others of this transaction, of which the last one's seal is not known. */
    private Numbered expected(Series series, PrintedAhead others) {
        Taken next = handle.createQuery("""
                SELECT next AS position, letters, head FROM series
                WHERE kind = :kind AND office = :office AND year = :year""").bind("kind", series.kind().name())
                .bind("office", series.office()).bind("year", series.year()).mapTo(Next.class).findOne()
                .map(known -> taken(series, known))
                .orElseGet(() -> taken(series, new Next(1, series.letters(), Seal.NONE)));
        int position = next.position() + Math.toIntExact(others.of(next.series()));
        return new Numbered(next.series().number(position), next.head(), next.issuedAt());
    }

    private IssuedPaper stored(Taken taken, Numbered numbered, Origin origin, PrintedPaper printed) {
        NewPaper rows = new NewPaper(handle);
        String hash = printed.pdf().hash();
        long whereabouts = rows.whereabouts(printed.facts().where());
        PaperRow row = row(taken, numbered, origin, printed, hash, whereabouts);
        issued.add(row);
        storeFile(row, printed.pdf().bytes());
        trail.begin(Subject.PAPER, row.number(), TrailEvent.ISSUED, () -> storeRows(rows, row, printed));
        kept.keep(row.number(), printed.pdf().bytes());
        step(Step.WORDS_STORED);
        return Papers.byNumber(handle, row.number()).orElseThrow();
    }

    private void storeRows(NewPaper rows, PaperRow row, PrintedPaper printed) {
        String seal = row.seal();
        long id = rows.store(row, seal);
        step(Step.ROW_STORED);
        rows.storeWords(id, row.whereabouts(), FindWords.ofPaper(row.number(), row.position(), printed.facts()));
        handle.createUpdate("UPDATE series SET head = :head WHERE kind = :kind AND office = :office AND year = :year")
                .bind("head", seal).bind("kind", row.kind()).bind("office", row.office()).bind("year", row.year())
                .execute();
    }

    private PaperRow row(Taken taken, Numbered numbered, Origin origin, PrintedPaper printed, String hash,
            long whereabouts) {
        Series series = taken.series();
        return new PaperRow(0, numbered.number(), series.kind().name(), series.office(), series.year(),
                taken.position(), printed.date().toString(), printed.due().map(Object::toString),
                taken.issuedAt(), origin, printed.sums().map(PaperRow.Amounts::of), printed.ratesVersion(),
                printed.json(), hash, taken.head(),
                whereabouts, printed.facts().where(), printed.sums().map(PaperRow.Line::all).orElse(List.of()));
    }

    private void storeFile(PaperRow row, byte[] pdf) {
        try {
            OwnersOnly.folder(files.unfinishedFolder());
            Flush.write(files.unfinished(row.number(), row.pdfHash()), pdf);
            step(Step.FILE_WRITTEN);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
