package icequill.answer;

import icequill.explain.ConstantKey;
import icequill.ledger.Reading;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.money.Amounts;
import icequill.problem.Problem;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A paper that the book issued.
 *
 * @param kind in words, such as {@code credit note}
 * @param gross what it comes to, negative for what a credit note gives back; empty for a paper without one sum
 * @param where customer, store and address
 * @param file where its PDF lies
 * @param corrects the invoice that a credit note gives back
 * @param replaces the invoice in whose place it was issued
 * @param notices what the office should know of it
 */
public record BookedPaper(String number, String kind, LocalDate date, Optional<LocalDate> due,
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
        return new BookedPaper(paper.number(), words(paper.series().kind()), paper.date(), paper.due(), gross,
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
        return kind + " " + number + total().map(sum -> ", " + sum).orElse("");
    }

    /** Kind and what it comes to, of a paper that has no number yet. */
    public String description() {
        return kind + total().map(sum -> ", " + sum).orElse("");
    }

    /** Number, date, kind, whom it is for, total. */
    public List<String> row() {
        return List.of(number, date.toString(), kind, where, total().orElse(""));
    }

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("number", number);
        view.put("kind", kind);
        view.put("date", date.toString());
        due.ifPresent(day -> view.put("due", day.toString()));
        gross.ifPresent(sum -> {
            view.put("currency", sum.getCurrency().getCurrencyCode());
            view.put("gross", Amounts.plain(sum));
        });
        view.put("for", where);
        view.put("file", file.toString());
        corrects.ifPresent(invoice -> view.put("corrects", invoice));
        replaces.ifPresent(invoice -> view.put("replaces", invoice));
        if (!notices.isEmpty()) {
            view.put("notices", notices.stream().map(JsonText::problem).toList());
        }
        return view;
    }

    private Optional<String> total() {
        return gross.map(sum -> sum.getCurrency().getCurrencyCode() + " " + Amounts.plain(sum));
    }
}
