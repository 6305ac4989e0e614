package icequill.ledger.care;

import icequill.ledger.find.FindWords;
import icequill.ledger.find.SearchKeys;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.PaperRow;
import icequill.ledger.papers.PaperRows;
import icequill.ledger.store.Minor;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.math.BigInteger;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.ToLongFunction;
import org.jdbi.v3.core.Handle;

/** Checks the row of one paper by itself: its sums, its data against it, its words. */
final class PaperCheck {

    private final Handle handle;
    private final PaperReader reader;
    private final Problems findings;
    private long words;

    PaperCheck(Handle handle, PaperReader reader, Problems findings) {
        this.handle = handle;
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
        Validated<PaperReader.Read> read = reader.read(row.data());
        if (read instanceof Validated.Valid<PaperReader.Read>(PaperReader.Read paper)) {
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

    private void damaged(String message) {
        findings.add(Code.BOOK_DAMAGED, Place.NOWHERE, message, "the row from a backup");
    }
}
