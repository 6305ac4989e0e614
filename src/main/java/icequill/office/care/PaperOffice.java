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
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.request.Extras;
import icequill.shop.ShopBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** The office that finds and prints again what the book issued. */
public final class PaperOffice {

    private final ShopBook book;
    private final Path papers;

    private PaperOffice(Path folder, Clock clock) {
        this.book = ShopBook.of(folder, clock);
        this.papers = folder.resolve("papers");
    }

    public static PaperOffice of(Path folder, Clock clock) {
        return new PaperOffice(folder, clock);
    }

    /** The papers that somebody looks for, the newest first. */
    public Checked<List<BookedPaper>> find(PaperWish wish) {
        return book.read(open -> new PaperSearch(open, wish).found()
                .map(papers -> papers.stream().map(paper -> BookedPaper.of(paper, open)).toList()));
    }

    /** What a paper needs to be printed again. */
    private record Kept(IssuedPaper issued, Path file, Checked<Pdf> pdf, Checked<Paper> paper) {

        static Kept of(Reading open, IssuedPaper issued) {
            String number = issued.number();
            return new Kept(issued, open.papers().file(issued), open.papers().pdf(number),
                    open.papers().data(number).then(data -> PaperJson.read(data, number)));
        }
    }

    /**
     * Makes sure that the paper's file is there as it was issued. Where it is gone or was changed it is printed again from the
     * paper's data, which gives the same bytes, or else is a problem; a file that was changed is kept aside.
     */
    public Checked<Reprint> reprint(String number) {
        return kept(number).then(kept -> kept.pdf() instanceof Checked.Sound<Pdf>
                ? Checked.sound(new Reprint(kept.issued().number(), kept.file(), kept.issued().pdfHash(), false,
                        Optional.empty()))
                : again(kept));
    }

    /** Writes copies into papers/ that differ from what was issued: without data within, or as HTML or XML beside it. */
    public Checked<List<Path>> copies(String number, Extras extras) {
        return kept(number).then(kept -> desk(kept.issued()).then(desk -> kept.paper()
                .then(paper -> desk.desk().printed(paper, kept.issued().number() + (extras.bare() ? "-bare" : ""),
                        extras, Marks.of(kept.issued())))
                .then(files -> desk.desk().written(files, true))));
    }

    /** Prints by the templates of then, as far as the book has them. */
    private Checked<PaperIssuer> desk(IssuedPaper issued) {
        return book.by(issued.ratesVersion()).map(then -> PaperIssuer.of(then.orElse(book)));
    }

    private Checked<Kept> kept(String number) {
        return book.read(open -> PaperNumbers.find(open, number).map(issued -> Kept.of(open, issued)));
    }

    private Checked<Reprint> again(Kept kept) {
        IssuedPaper issued = kept.issued();
        return desk(issued).then(desk -> kept.paper().then(paper -> desk.pdf(paper, Marks.of(issued)))).then(pdf -> {
            if (!Pdf.of(pdf).hash().equals(issued.pdfHash())) {
                return Checked.faulty(new Problem(Code.BOOK_DAMAGED, Place.ofFile(kept.file().toString()),
                        "printed again, " + issued.number()
                                + " is not what was issued: the program has changed since, or templates of which the book has no copy",
                        "the file from a backup, or a copy that says so: --html or --bare"));
            }
            return aside(kept.file()).then(old -> SafeFile.write(kept.file(), pdf, true)
                    .map(file -> new Reprint(issued.number(), file, issued.pdfHash(), true, old)));
        });
    }

    /** Moves a file that was changed out of the way. */
    private Checked<Optional<Path>> aside(Path file) {
        if (!Files.exists(file)) {
            return Checked.sound(Optional.empty());
        }
        Path target = papers.resolve("changed-" + file.getFileName());
        try {
            return Checked.sound(Optional.of(Files.move(file, target, StandardCopyOption.REPLACE_EXISTING)));
        } catch (IOException failed) {
            return Checked.faulty(new Problem(Code.CANNOT_WRITE, Place.ofFile(target.toString()),
                    "cannot move the changed file here: " + failed, "a folder that may be written to"));
        }
    }
}
