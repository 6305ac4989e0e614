package icequill.ledger;

import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToLongFunction;

/** Checks one paper by itself: its sums, its data against its row, its file. */
final class PaperCheck {

    private final PaperFiles files;
    private final PaperReader reader;
    private final Problems findings;

    PaperCheck(PaperFiles files, PaperReader reader, Problems findings) {
        this.files = files;
        this.reader = reader;
        this.findings = findings;
    }

    void check(PaperRow row) {
        row.sums().ifPresent(sums -> checkSums(row, sums));
        checkData(row);
        checkFile(row);
    }

    private void checkSums(PaperRow row, PaperRow.Amounts sums) {
        same(row, "the lines together", sum(row.lines(), PaperRow.Line::net), sums.lines());
        same(row, "the lines less the discount", sum(row.lines(), PaperRow.Line::base), sums.net());
        same(row, "net and tax together", sums.net() + sums.tax(), sums.gross());
    }

    private static long sum(List<PaperRow.Line> lines, ToLongFunction<PaperRow.Line> part) {
        return lines.stream().mapToLong(part).reduce(0, Math::addExact);
    }

    private void same(PaperRow row, String what, long added, long stored) {
        if (added != stored) {
            String currency = row.sums().map(PaperRow.Amounts::currency).orElseThrow();
            damaged(Place.NOWHERE, row.number() + ": " + what + " come to " + Minor.amount(added, currency) + ", not "
                    + Minor.amount(stored, currency));
        }
    }

    private void checkData(PaperRow row) {
        Checked<PaperReader.Read> read = reader.read(row.data());
        if (read instanceof Checked.Sound<PaperReader.Read>(PaperReader.Read paper)) {
            differs(row, "the number", row.number(), paper.number().orElse(row.number()));
            differs(row, "the date", row.dated(), paper.date().toString());
            differs(row, "what it comes to", row.sums(), paper.sums().map(PaperRow.Amounts::of));
            differs(row, "what its lines say", row.lines(), paper.sums().map(PaperRow.Line::all).orElse(List.of()));
        } else {
            for (Problem problem : read.problems()) {
                damaged(Place.NOWHERE, row.number() + ": its data cannot be read: " + problem.message());
            }
        }
    }

    private void differs(PaperRow row, String what, Object stored, Object read) {
        if (!Objects.equals(stored, read)) {
            damaged(Place.NOWHERE,
                    row.number() + ": " + what + " is " + stored + " in the row, and " + read + " in the data");
        }
    }

    private void checkFile(PaperRow row) {
        Place place = Place.ofFile(files.place(row.series(), row.number()).toString());
        Optional<String> fault = fault(row);
        fault.ifPresent(message -> findings.add(Code.BOOK_DAMAGED, place, message, "the file from a backup"));
    }

    private Optional<String> fault(PaperRow row) {
        try {
            String hash = Hash.of(files.read(row.series(), row.number(), row.pdfHash()));
            return hash.equals(row.pdfHash())
                    ? Optional.empty()
                    : Optional.of("the file of " + row.number() + " was changed after it was issued");
        } catch (NoSuchFileException gone) {
            return Optional.of("the file of " + row.number() + " is missing");
        } catch (IOException unreadable) {
            return Optional.of("the file of " + row.number() + " cannot be read: " + unreadable);
        }
    }

    private void damaged(Place place, String message) {
        findings.add(Code.BOOK_DAMAGED, place, message, "the row from a backup");
    }
}
