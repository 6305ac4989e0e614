package icequill.ledger.care;

import icequill.ledger.find.FindWords;
import icequill.ledger.find.SearchKeys;
import icequill.ledger.papers.Marks;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.PaperRow;
import icequill.ledger.papers.PaperRows;
import icequill.ledger.papers.Pdf;
import icequill.ledger.store.Minor;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.ToLongFunction;
import javax.money.MonetaryAmount;
import org.jdbi.v3.core.Handle;

/** Checks one paper by itself: its sums, its data against its row, its words, its file and what that says of itself. */
final class PaperCheck {

    private final Handle handle;
    private final FileScope files;
    private final PaperReader reader;
    private final Problems findings;
    private long words;

    PaperCheck(Handle handle, FileScope files, PaperReader reader, Problems findings) {
        this.handle = handle;
        this.files = files;
        this.reader = reader;
        this.findings = findings;
    }

    /** How many words the papers that were checked are to be found by. */
    long words() {
        return words;
    }

    void check(PaperRows.Sealed sealed) {
        PaperRow row = sealed.row();
        row.sums().ifPresent(sums -> checkSums(row, sums));
        checkData(row);
        // A number that is none would lead out of the folder.
        if (files.isHere(row.series()) && row.number().equals(row.series().number(row.position()))) {
            checkFile(row);
        }
    }

    private void checkSums(PaperRow row, PaperRow.Amounts sums) {
        same(row, "the lines together", sum(row.lines(), PaperRow.Line::net), sums.lines());
        same(row, "the lines less the discount", sum(row.lines(), PaperRow.Line::base), sums.net());
        same(row, "net and tax together", BigInteger.valueOf(sums.net()).add(BigInteger.valueOf(sums.tax())),
                sums.gross());
    }

    private static BigInteger sum(List<PaperRow.Line> lines, ToLongFunction<PaperRow.Line> part) {
        return lines.stream().map(line -> BigInteger.valueOf(part.applyAsLong(line)))
                .reduce(BigInteger.ZERO, BigInteger::add);
    }

    private void same(PaperRow row, String what, BigInteger added, long stored) {
        if (!added.equals(BigInteger.valueOf(stored))) {
            String currency = row.sums().map(PaperRow.Amounts::currency).orElseThrow();
            damaged(row.number() + ": " + what + " come to " + Minor.text(added, currency) + ", not "
                    + Minor.text(BigInteger.valueOf(stored), currency));
        }
    }

    private void checkData(PaperRow row) {
        Checked<PaperReader.Read> read = reader.read(row.data());
        if (read instanceof Checked.Sound<PaperReader.Read>(PaperReader.Read paper)) {
            differs(row, "the number", row.number(), paper.number().orElse(row.number()));
            differs(row, "the date", row.dated(), paper.date().toString());
            differs(row, "the last day to pay", row.due(), paper.due().map(Object::toString));
            differs(row, "what it comes to", row.sums(), paper.sums().map(PaperRow.Amounts::of));
            differs(row, "what its lines say", row.lines(), paper.sums().map(PaperRow.Line::all).orElse(List.of()));
            checkWhere(row, paper.facts());
            checkWords(row, FindWords.ofPaper(row.number(), row.position(), paper.facts()));
        } else {
            for (Problem problem : read.problems()) {
                damaged(row.number() + ": its data cannot be read: " + problem.message());
            }
        }
    }

    private void differs(PaperRow row, String what, Object stored, Object read) {
        if (!Objects.equals(stored, read)) {
            damaged(row.number() + ": " + what + " is " + stored + " in the row, and " + read + " in the data");
        }
    }

    private void checkWhere(PaperRow row, SearchKeys facts) {
        if (!row.where().startsWith(facts.customer())
                || !row.where().endsWith("\n" + facts.store() + "\n" + facts.address())) {
            damaged(row.number() + ": where it went is \"" + row.where().replace("\n", ", ")
                    + "\" among the places, and another in its data");
        }
    }

    private void checkWords(PaperRow row, Set<String> expected) {
        words += expected.size();
        long stored = handle.createQuery(
                """
                        SELECT count(*) FROM paper_word WHERE paper_id = :paper AND whereabouts_id = :where AND word IN (<words>)""")
                .bind("paper", row.id()).bind("where", row.whereabouts()).bindList("words", expected)
                .mapTo(Long.class).one();
        if (stored != expected.size()) {
            damaged(row.number() + ": the words that it is found by are not those of its data");
        }
    }

    private void checkFile(PaperRow row) {
        Place place = Place.ofFile(files.files().place(row.series(), row.number()).toString());
        try {
            Pdf pdf = Pdf.of(files.files().read(row.series(), row.number(), row.pdfHash()));
            if (pdf.hash().equals(row.pdfHash())) {
                // A file that was changed is told of once.
                checkCarried(row, pdf, place);
            } else {
                damaged(place, "the file of " + row.number() + " was changed after it was issued");
            }
        } catch (NoSuchFileException gone) {
            damaged(place, Archive.isMissing(row.number()));
        } catch (IOException unreadable) {
            damaged(place, "the file of " + row.number() + " cannot be read: " + unreadable);
        }
    }

    /** The file and its hash in the row may both have been changed by somebody who reckoned all seals anew. */
    private void checkCarried(PaperRow row, Pdf pdf, Place place) {
        Checked<PaperReader.Carried> read = reader.carried(pdf);
        if (!(read instanceof Checked.Sound<PaperReader.Carried>(PaperReader.Carried carried))) {
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
        if (!carried.printed().contains(row.number())) {
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

    private void damaged(String message) {
        findings.add(Code.BOOK_DAMAGED, Place.NOWHERE, message, "the row from a backup");
    }

    private void damaged(Place place, String message) {
        findings.add(Code.BOOK_DAMAGED, place, message, "the file from a backup");
    }
}
