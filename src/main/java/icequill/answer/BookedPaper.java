package icequill.answer;

import icequill.explain.ConstantKey;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.money.Amounts;
import icequill.problem.Problem;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A paper that the book issued.
 *
 * @param gross what it comes to, negative for what a credit note gives back; empty for a paper without one sum
 * @param where customer, store and address
 * @param file where its PDF lies
 * @param corrects the invoice that a credit note gives back
 * @param replaces the invoice in whose place it was issued
 * @param notices what the office should know of it
 */
public record BookedPaper(String number, PaperKind kind, LocalDate date, Optional<LocalDate> due,
        Optional<MonetaryAmount> gross, String where, Path file, Optional<String> corrects,
        Optional<String> replaces, List<Problem> notices) {

    public BookedPaper {
        notices = List.copyOf(notices);
    }

    /** The heads of {@link #row}. */
    public static final List<String> HEAD = List.of("number", "date", "paper", "for", "total");

    public static BookedPaper of(IssuedPaper paper, Reading book) {
        Optional<MonetaryAmount> gross = paper.gross()
                .map(sum -> paper.series().kind() == PaperKind.CREDIT_NOTE ? sum.negate() : sum);
        return new BookedPaper(paper.number(), paper.series().kind(), paper.date(), paper.due(), gross,
                paper.text().replace("\n", ", "), book.papers().file(paper), paper.origin().corrects(),
                paper.origin().replaces(), List.of());
    }

    public BookedPaper with(List<Problem> known) {
        return new BookedPaper(number, kind, date, due, gross, where, file, corrects, replaces, known);
    }

    /** A kind in words. */
    public static String words(PaperKind kind) {
        return ConstantKey.words(kind.name());
    }

    /** Kind, number and what it comes to. */
    public String title() {
        return words(kind) + " " + number + total().map(sum -> ", " + sum).orElse("");
    }

    /** Kind and what it comes to, of a paper that has no number yet. */
    public String description() {
        return words(kind) + total().map(sum -> ", " + sum).orElse("");
    }

    /** Number, date, kind, whom it is for, total. */
    public List<String> row() {
        return List.of(number, date.toString(), words(kind), where, total().orElse(""));
    }

    /** Names and values, for a table of text. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("number", number));
        rows.add(List.of("kind", words(kind)));
        rows.add(List.of("date", date.toString()));
        due.ifPresent(day -> rows.add(List.of("due", day.toString())));
        total().ifPresent(sum -> rows.add(List.of("gross", sum)));
        rows.add(List.of("where", where));
        rows.add(List.of("file", file.toString()));
        corrects.ifPresent(invoice -> rows.add(List.of("corrects", invoice)));
        replaces.ifPresent(invoice -> rows.add(List.of("replaces", invoice)));
        return rows;
    }

    private Optional<String> total() {
        return gross.map(sum -> sum.getCurrency().getCurrencyCode() + " " + Amounts.plain(sum));
    }
}
