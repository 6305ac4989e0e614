package icequill.office.care;

import icequill.answer.BookedPaper;
import icequill.answer.Reprint;
import icequill.document.Paper;
import icequill.files.disk.SafeFile;
import icequill.files.paper.PaperJson;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Marks;
import icequill.ledger.papers.Pdf;
import icequill.office.writing.PaperIssuer;
import icequill.office.writing.PaperNumbers;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.Extras;
import icequill.shop.ShopBook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The office that finds and prints again what the book issued. */
public final class PaperOffice {

    private final ShopBook book;
    private final Path papers;

    private PaperOffice(ShopBook book) {
        this.book = book;
        this.papers = book.folder().resolve("papers");
    }

    public static PaperOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static PaperOffice of(ShopBook book) {
        return new PaperOffice(book);
    }

    /** The papers that somebody looks for, the newest first. */
    public Validated<List<BookedPaper>> find(PaperWish wish) {
        return book.read(open -> new PaperSearch(open, wish).found()
                .map(papers -> papers.stream().map(paper -> BookedPaper.of(paper, open)).toList()));
    }

    /**
     * A paper's file.
     *
     * @param number of the paper, however it was asked for
     */
    public record IssuedFile(String number, Pdf pdf) {}

    /** The file of a paper, as it was issued; of the one where it lies, else out of the book. */
    public Validated<IssuedFile> file(String number) {
        return kept(number).then(kept -> kept.inBook().map(Validated::valid).orElseGet(kept::pdf)
                .map(pdf -> new IssuedFile(kept.issued().number(), pdf)));
    }

    /** The same without data within, as mail gateways want it that hold back what carries files. */
    public Validated<IssuedFile> bare(String number) {
        return copied(number, new Extras(false, false, true))
                .map(file -> new IssuedFile(file.getKey(), Pdf.of(file.getValue())));
    }

    /** An invoice or credit note as UBL 2.1, by the name of its file. */
    public Validated<Map.Entry<String, String>> ubl(String number) {
        return copied(number, new Extras(false, true, false))
                .map(file -> Map.entry(file.getKey(), new String(file.getValue(), StandardCharsets.UTF_8)));
    }

    /** The last of the files that a copy consists of. */
    private Validated<Map.Entry<String, byte[]>> copied(String number, Extras extras) {
        return kept(number).then(kept -> copied(kept, extras))
                .map(files -> List.copyOf(files.entrySet()).getLast());
    }

    private Validated<Map<String, byte[]>> copied(Kept kept, Extras extras) {
        return desk(kept.issued()).then(desk -> kept.paper().then(paper -> desk.desk().printed(paper,
                kept.issued().number() + (extras.bare() ? "-bare" : ""), extras, Marks.of(kept.issued()))));
    }

    /** What a paper needs to be printed again. */
    private record Kept(IssuedPaper issued, Path file, Validated<Pdf> pdf, Optional<Pdf> inBook,
            Validated<Paper> paper) {

        static Kept of(Reading open, IssuedPaper issued) {
            String number = issued.number();
            return new Kept(issued, open.papers().file(issued), open.papers().pdf(number),
                    open.keptPdfs().of(number).filter(pdf -> pdf.hash().equals(issued.pdfHash())),
                    open.papers().data(number).then(data -> PaperJson.read(data, number)));
        }
    }

    /**
     * Makes sure that the paper's file is there as it was issued. Where it is gone or was changed it is copied out of a book that has it,
     * or printed again from the paper's data, which gives the same bytes, or else is a problem; a file that was changed is kept aside.
     * A book that should have the file, and comes from before it did, gets it.
     */
    public Validated<Reprint> reprint(String number) {
        return kept(number).then(kept -> kept.pdf() instanceof Validated.Valid<Pdf>(Pdf pdf)
                ? given(kept, pdf).map(done -> new Reprint(kept.issued().number(), kept.file(),
                        kept.issued().pdfHash(), Reprint.Way.THERE, Optional.empty()))
                : again(kept));
    }

    /** The same for every paper of the book; those that were there are not told. */
    public Validated<List<Reprint>> reprintAll() {
        return book.together(held -> {
            PaperOffice office = new PaperOffice(held);
            List<String> numbers = new ArrayList<>();
            Problems problems = new Problems();
            List<Reprint> made = new ArrayList<>();
            problems.take(held.read(open -> {
                open.papers().each(paper -> numbers.add(paper.number()));
                return Validated.valid(true);
            }));
            numbers.forEach(number -> problems.take(office.reprint(number))
                    .filter(paper -> paper.way() != Reprint.Way.THERE).ifPresent(made::add));
            return problems.or(() -> made);
        });
    }

    private Validated<Boolean> given(Kept kept, Pdf pdf) {
        return book.isShared() && kept.inBook().isEmpty()
                ? book.write(open -> {
                    if (open.keptPdfs().of(kept.issued().number()).isEmpty()) {
                        open.keepPdf(kept.issued().number(), pdf);
                    }
                    return Validated.valid(true);
                })
                : Validated.valid(false);
    }

    /** Writes copies into papers/ that differ from what was issued: without data within, or as HTML or XML beside it. */
    public Validated<List<Path>> copies(String number, Extras extras) {
        return kept(number).then(kept -> copied(kept, extras)
                .then(files -> desk(kept.issued()).then(desk -> desk.desk().written(files, true))));
    }

    /** Prints by the templates of then, as far as the book has them. */
    private Validated<PaperIssuer> desk(IssuedPaper issued) {
        return book.by(issued.ratesVersion()).map(then -> PaperIssuer.of(then.orElse(book)));
    }

    private Validated<Kept> kept(String number) {
        return book.read(open -> PaperNumbers.find(open, number).map(issued -> Kept.of(open, issued)));
    }

    private Validated<Reprint> again(Kept kept) {
        IssuedPaper issued = kept.issued();
        if (kept.inBook().isPresent()) {
            return aside(kept.file()).then(old -> SafeFile.write(kept.file(), kept.inBook().get().bytes(), true)
                    .map(file -> new Reprint(issued.number(), file, issued.pdfHash(), Reprint.Way.COPIED, old)));
        }
        return desk(issued).then(desk -> kept.paper().then(paper -> desk.pdf(paper, Marks.of(issued)))).then(pdf -> {
            if (!Pdf.of(pdf).hash().equals(issued.pdfHash())) {
                return Validated.invalid(new Problem(Code.BOOK_DAMAGED, Place.ofFile(kept.file().toString()),
                        "printed again, " + issued.number()
                                + " is not what was issued: the program has changed since, or templates of which the book has no copy",
                        "the file from a backup, or a copy that says so: --html or --bare"));
            }
            return aside(kept.file()).then(old -> SafeFile.write(kept.file(), pdf, true)
                    .map(file -> new Reprint(issued.number(), file, issued.pdfHash(), Reprint.Way.PRINTED, old)));
        });
    }

    /** Moves a file that was changed out of the way. */
    private Validated<Optional<Path>> aside(Path file) {
        if (!Files.exists(file)) {
            return Validated.valid(Optional.empty());
        }
        Path target = papers.resolve("changed-" + file.getFileName());
        try {
            return Validated.valid(Optional.of(Files.move(file, target, StandardCopyOption.REPLACE_EXISTING)));
        } catch (IOException failed) {
            return Validated.invalid(new Problem(Code.CANNOT_WRITE, Place.ofFile(target.toString()),
                    "cannot move the changed file here: " + failed, "a folder that may be written to"));
        }
    }
}
