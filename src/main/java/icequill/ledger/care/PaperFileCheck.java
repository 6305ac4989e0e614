package icequill.ledger.care;

import icequill.ledger.papers.Marks;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.PaperRow;
import icequill.ledger.papers.Pdf;
import icequill.ledger.store.Minor;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.money.MonetaryAmount;

/** Checks the file of one paper, and what it says of itself, against the paper's row. */
record PaperFileCheck(FileScope scope, PaperReader reader, Problems findings) {

    /** @param kept what the book itself has; it stands for a file that another office has */
    static List<Problem> problems(FileScope scope, PaperReader reader, PaperRow row, Optional<Pdf> kept) {
        PaperFileCheck check = new PaperFileCheck(scope, reader, new Problems());
        kept.filter(pdf -> !pdf.hash().equals(row.pdfHash())).ifPresent(changed -> check.damaged(Place.NOWHERE,
                "the file of " + row.number() + " in the book itself was changed after it was issued"));
        check.check(row, kept);
        return check.findings.list();
    }

    private void check(PaperRow row, Optional<Pdf> kept) {
        PaperFiles files = scope.files();
        Place place = Place.ofFile(files.place(row.series(), row.number()).toString());
        try {
            Pdf pdf = Pdf.of(files.read(row.series(), row.number(), row.pdfHash()));
            if (pdf.hash().equals(row.pdfHash())) {
                // A file that was changed is told of once.
                checkCarried(row, pdf, place);
            } else {
                damaged(place, Archive.isChanged(row.number()));
            }
        } catch (NoSuchFileException gone) {
            if (scope.isOwn(row.series()) || (kept.isEmpty() && scope.isHere(row.series()))) {
                damaged(place, Archive.isMissing(row.number()));
            }
            kept.filter(pdf -> pdf.hash().equals(row.pdfHash()))
                    .ifPresent(pdf -> checkCarried(row, pdf, Place.NOWHERE));
        } catch (IOException unreadable) {
            damaged(place, "the file of " + row.number() + " cannot be read: " + unreadable);
        }
    }

    /** The file and its hash in the row may both have been changed by somebody who reckoned all seals anew. */
    private void checkCarried(PaperRow row, Pdf pdf, Place place) {
        Validated<PaperReader.Carried> read = reader.carried(pdf);
        if (!(read instanceof Validated.Valid<PaperReader.Carried>(PaperReader.Carried carried))) {
            read.problems()
                    .forEach(problem -> damaged(place, "the file of " + row.number() + ": " + problem.message()));
            return;
        }
        Map<String, String> expected = Marks.of(row);
        // Papers of earlier versions say no more than the seal before them.
        boolean isBrief = carried.marks().keySet().equals(Set.of(Marks.PREVIOUS));
        if (!row.previousSeal().equals(carried.marks().get(Marks.PREVIOUS))) {
            damaged(place, "the file of " + row.number()
                    + " bears another seal of the paper before it than the book: seals were reckoned anew");
        } else if (!isBrief && !carried.marks().equals(expected)) {
            damaged(place, "the file of " + row.number() + " says of itself " + carried.marks() + ", and the book "
                    + expected);
        }
        if (!reader.prints(pdf, row.number())) {
            damaged(place, "the file of " + row.number() + " does not print that number");
        }
        carried.data().filter(data -> !data.equals(row.data()))
                .ifPresent(data -> damaged(place,
                        "the data within the file of " + row.number() + " are not those of the book"));
        if (!carried.eachNames(row.number())) {
            damaged(place, "what the file of " + row.number() + " carries is another paper");
        }
        carried.bills().forEach(bill -> checkStated(row, bill, place));
    }

    /** Programs book by the electronic bill, and people by what is printed. */
    private void checkStated(PaperRow row, PaperReader.Stated bill, Place place) {
        String inFile = bill.file() + " in the file of " + row.number();
        if (!bill.date().toString().equals(row.dated())) {
            damaged(place, inFile + " is of " + bill.date() + ", and the paper of " + row.dated());
        }
        row.sums().ifPresent(sums -> {
            MonetaryAmount gross = Minor.stored(sums.gross(), sums.currency());
            if (!bill.total().equals(gross) || !bill.payable().equals(gross)) {
                damaged(place, inFile + " comes to " + bill.total() + " with " + bill.payable()
                        + " to pay, and the paper to " + gross);
            }
        });
    }

    private void damaged(Place place, String message) {
        findings.add(Code.BOOK_DAMAGED, place, message, "the file from a backup");
    }
}
