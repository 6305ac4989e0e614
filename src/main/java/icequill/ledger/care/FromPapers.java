package icequill.ledger.care;

import icequill.explain.ConstantKey;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.CustomerRows;
import icequill.ledger.entries.Entries;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.SiteRows;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.entries.VisitRows;
import icequill.ledger.find.FindWords;
import icequill.ledger.find.SearchKeys;
import icequill.ledger.papers.KeptPdfs;
import icequill.ledger.papers.Marks;
import icequill.ledger.papers.NewPaper;
import icequill.ledger.papers.NewestSeals;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.PaperRow;
import icequill.ledger.papers.PaperRows;
import icequill.ledger.papers.Pdf;
import icequill.ledger.papers.Series;
import icequill.ledger.papers.SeriesHead;
import icequill.ledger.papers.SeriesRows;
import icequill.ledger.store.Seal;
import icequill.ledger.trail.Subject;
import icequill.ledger.trail.Trail;
import icequill.ledger.trail.TrailEvent;
import icequill.party.Address;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/**
 * Takes into the book the papers that it lacks, out of their PDFs: data and marks within make the row again as it was, so that its seal
 * fits the one that the next paper bears. Each series goes on after the highest number that was ever seen.
 */
public final class FromPapers {

    private static final String EARLIER = "a backup that has it; its number stays taken";

    private final Handle handle;
    private final PaperFiles files;
    private final PaperReader reader;
    private final Instant now;
    private final Trail trail;
    private final KeptPdfs kept;
    private final Problems problems = new Problems();
    private final List<String> taken = new ArrayList<>();

    /** A paper as its PDF says it. */
    private record Found(PaperRow row, PaperReader.Read read) {}

    /** What was taken, and what could not be. */
    public record Outcome(List<String> taken, List<Problem> problems) {}

    public FromPapers(Handle handle, PaperFiles files, PaperReader reader, Instant now, Trail trail,
            KeptPdfs kept) {
        this.handle = handle;
        this.files = files;
        this.reader = reader;
        this.now = now;
        this.trail = trail;
        this.kept = kept;
    }

    public Outcome run() throws IOException {
        files.finishWaiting().forEach(number -> problems.add(new Problem(Code.BOOK_DAMAGED, Place.NOWHERE,
                number + " waited to be moved to its place, and counts as issued", "a credit note if nobody got it")));
        List<Path> folders;
        try (Stream<Path> all = Files.list(files.folder())) {
            folders = all.filter(PaperFiles::isOfSeries).sorted().toList();
        }
        List<Series> found = new ArrayList<>();
        for (Path folder : folders) {
            series(folder).ifPresentOrElse(found::add,
                    () -> problems.add(wrong(folder, "is not the folder of a series", "moved elsewhere")));
        }
        // What corrects or replaces an invoice points to it.
        found.sort(Comparator.comparing(Series::kind).thenComparing(Series::text));
        for (Series series : found) {
            take(series);
        }
        return new Outcome(List.copyOf(taken), problems.list());
    }

    /** Of the kind that its papers say, since a shop sets its letters; where none can be read, the book's or the usual kind. */
    private Optional<Series> series(Path folder) throws IOException {
        String text = String.valueOf(folder.getFileName());
        if (!Series.isText(text)) {
            return Optional.empty();
        }
        for (Path file : PaperFiles.inSeries(folder)) {
            Optional<PaperKind> kind = reader.carried(Pdf.of(Files.readAllBytes(file))).found()
                    .flatMap(PaperReader.Carried::data).flatMap(data -> reader.read(data).found())
                    .filter(read -> read.number().equals(Optional.of(number(file))))
                    .map(PaperReader.Read::kind);
            if (kind.isPresent()) {
                return kind.flatMap(said -> Series.ofText(text, said));
            }
        }
        Stream<Series> known = SeriesRows.heads(handle).stream().map(SeriesHead::series);
        Stream<Series> usual = Stream.of(PaperKind.values()).flatMap(kind -> Series.ofText(text, kind).stream())
                .filter(series -> series.letters().equals(series.kind().usualLetters()));
        return Stream.concat(known, usual).filter(series -> series.text().equals(text)).findFirst();
    }

    private void take(Series series) throws IOException {
        Optional<Series> other = SeriesRows.heads(handle).stream().map(SeriesHead::series)
                .filter(known -> known.isSameRunAs(series) && !known.equals(series)).findFirst();
        if (other.isPresent()) {
            problems.add(wrong(files.folder().resolve(series.text()),
                    "is of the kind and year of " + other.get().text() + ", which has other letters",
                    "moved elsewhere"));
            return;
        }
        Map<Integer, String> seals = new HashMap<>();
        int highest = 0;
        for (Path file : PaperFiles.inSeries(files.folder().resolve(series.text()))) {
            String number = number(file);
            Optional<Integer> position = series.position(number);
            if (position.isEmpty()) {
                problems.add(wrong(file, "bears no number of its series", "moved elsewhere"));
                continue;
            }
            highest = Math.max(highest, position.get());
            Optional<PaperRow> known = PaperRows.byNumber(handle, number);
            Pdf pdf = Pdf.of(Files.readAllBytes(file));
            if (known.isPresent()) {
                seals.put(position.get(), storedSeal(number));
                if (!known.get().pdfHash().equals(pdf.hash())) {
                    problems.add(wrong(file, "is another paper than the book's " + number, EARLIER));
                }
            } else {
                switch (read(series, number, position.get(), pdf)
                        .then(read -> follows(series, read, Optional.ofNullable(seals.get(position.get() - 1))))) {
                case Validated.Valid<Found>(Found valid) -> {
                    store(valid);
                    kept.keep(number, pdf.bytes());
                    seals.put(position.get(), valid.row().seal());
                    taken.add(number);
                }
                case Validated.Invalid<Found> invalid ->
                    invalid.problems().forEach(problem -> problems.add(wrong(file, problem.message(), EARLIER)));
                }
            }
        }
        goOn(series, highest, seals);
    }

    private Validated<Found> read(Series series, String number, int position, Pdf pdf) {
        return reader.carried(pdf).then(carried -> {
            Map<String, String> marks = carried.marks();
            return carried.data().isPresent() && Marks.areWhole(marks)
                    ? reader.read(carried.data().get()).map(read -> new Found(new PaperRow(0, number,
                            series.kind().name(), series.office(), series.year(), position, read.date().toString(),
                            read.due().map(Object::toString), Marks.issued(marks), Marks.origin(marks),
                            read.sums().map(PaperRow.Amounts::of), Marks.rates(marks), carried.data().get(), pdf.hash(),
                            Marks.previous(marks), 0, Marks.where(marks),
                            read.sums().map(PaperRow.Line::all).orElse(List.of())), read))
                    : unfit("says too little of itself: it was issued by an earlier version, or changed");
        });
    }

    private Validated<Found> follows(Series series, Found found, Optional<String> before) {
        PaperRow row = found.row();
        if (!found.read().number().equals(Optional.of(row.number()))) {
            return unfit("is paper " + found.read().number().orElse("without a number") + " within");
        }
        if (found.read().kind() != series.kind()) {
            return unfit("is of the kind " + ConstantKey.words(found.read().kind().name()) + " within");
        }
        if (before.filter(seal -> !seal.equals(row.previousSeal())).isPresent()) {
            return unfit("does not follow the paper before it: one of the two was changed");
        }
        return Stream.of(row.origin().corrects(), row.origin().replaces()).flatMap(Optional::stream)
                .filter(other -> PaperRows.byNumber(handle, other).isEmpty()).findFirst()
                .map(other -> unfit("goes with " + other + ", which the book lacks"))
                .orElse(Validated.valid(found));
    }

    private void store(Found found) {
        name(found);
        trail.begin(Subject.PAPER, found.row().number(), TrailEvent.TAKEN_FROM_PAPER, () -> storeRows(found));
    }

    private void storeRows(Found found) {
        NewPaper rows = new NewPaper(handle);
        long where = rows.whereabouts(found.row().where());
        long id = rows.store(found.row().at(where), found.row().seal());
        rows.storeWords(id, where,
                FindWords.ofPaper(found.row().number(), found.row().position(), found.read().facts()));
    }

    /** A customer, site or visit that the book lacks too is entered by what the paper says of it. */
    private void name(Found found) {
        Origin origin = found.row().origin();
        SearchKeys facts = found.read().facts();
        Entries entries = new Entries(handle);
        String customer = origin.customer().orElse("");
        if (!customer.isEmpty() && !entries.has("customer", customer)) {
            trail.begin(Subject.CUSTOMER, customer, TrailEvent.TAKEN_FROM_PAPER,
                    () -> new CustomerRows(handle).insert(CustomerEntry.named(customer, facts.customer())));
            problems.add(named("customer \"" + customer + "\""));
        }
        Stream<Origin.At> visits = Stream.concat(
                Stream.of(new Origin.At(origin.visit().orElse(""), origin.site().orElse(""))),
                origin.further().stream());
        visits.forEach(at -> name(found, customer, at));
    }

    /** A site and a visit; either may be of no letters. */
    private void name(Found found, String customer, Origin.At at) {
        SearchKeys facts = found.read().facts();
        Entries entries = new Entries(handle);
        String site = at.site();
        if (!site.isEmpty() && !entries.has("site", site)) {
            trail.begin(Subject.SITE, site, TrailEvent.TAKEN_FROM_PAPER,
                    () -> SiteRows.insert(handle, new SiteEntry(site, customer, facts.store(), Optional.empty(),
                            new Address(List.of(facts.address()), "", "", "", ""), Optional.empty(), "")));
            problems.add(named("site \"" + site + "\""));
        }
        String visit = at.visit();
        if (!visit.isEmpty() && !entries.has("visit", visit)) {
            ZonedDateTime day = found.read().date().atStartOfDay(ZoneOffset.UTC);
            trail.begin(Subject.VISIT, visit, TrailEvent.TAKEN_FROM_PAPER, () -> VisitRows.insert(handle,
                    new VisitEntry(visit, site, day, day, Optional.empty(), false, ""), now));
            problems.add(named("visit \"" + visit + "\""));
        }
    }

    /** The number after the highest is the next, whether or not the highest could be read. */
    private void goOn(Series series, int inFiles, Map<Integer, String> seals) throws IOException {
        Optional<NewestSeals.Mark> mark = files.seals().of(series);
        Optional<SeriesHead> head = SeriesRows.heads(handle).stream().filter(row -> row.series().equals(series))
                .findFirst();
        int highest = Math.max(inFiles, mark.map(NewestSeals.Mark::position).orElse(0));
        if (highest > head.map(SeriesHead::papers).orElse(0)) {
            String seal = mark.filter(newest -> newest.position() == highest).map(NewestSeals.Mark::seal)
                    .orElse(seals.getOrDefault(highest, Seal.NONE));
            handle.createUpdate("DELETE FROM series WHERE kind = :kind AND office = :office AND year = :year")
                    .bind("kind", series.kind().name()).bind("office", series.office()).bind("year", series.year())
                    .execute();
            handle.createUpdate("INSERT INTO series (kind, letters, office, year, next, head) VALUES (:kind, :letters,"
                    + " :office, :year, :next, :head)").bind("kind", series.kind().name())
                    .bind("letters", series.letters()).bind("office", series.office())
                    .bind("year", series.year()).bind("next", highest + 1).bind("head", seal).execute();
            files.seals().note(series, highest, seal);
        }
    }

    private static String number(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.substring(0, name.length() - ".pdf".length());
    }

    private String storedSeal(String number) {
        return handle.createQuery("SELECT seal FROM paper WHERE number = :number").bind("number", number)
                .mapTo(String.class).one();
    }

    private static Validated<Found> unfit(String message) {
        return Validated.invalid(new Problem(Code.BOOK_DAMAGED, Place.NOWHERE, message, EARLIER));
    }

    private static Problem wrong(Path file, String message, String allowed) {
        return new Problem(Code.BOOK_DAMAGED, Place.ofFile(file.toString()), message, allowed);
    }

    private static Problem named(String what) {
        return new Problem(Code.MISSING, Place.NOWHERE, what + " is known by what its papers say only",
                "the rest entered again");
    }
}
