package icequill.answer.quote;

import icequill.answer.BookedPaper;
import icequill.answer.shown.QuoteStanding.State;
import icequill.explain.ConstantKey;
import icequill.ledger.papers.PaperKind;
import icequill.money.Amounts;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** Quotes that were issued, the newest first. */
public record QuoteList(List<Row> papers) {

    /** The heads of the rows. */
    public static final List<String> HEAD = List.of("number", "date", "paper", "state", "last day", "for", "total");

    /**
     * One of them.
     *
     * @param validUntil the last day on which its prices hold; missing where its data cannot be read, which an audit tells
     * @param isLapsed whether nobody answered until that day, and it has gone by
     * @param gross missing for one with choices
     * @param where customer, store and address
     * @param file where its PDF lies
     */
    public record Row(String number, PaperKind kind, LocalDate date, State state, Optional<LocalDate> validUntil,
            boolean isLapsed,
            Optional<MonetaryAmount> gross, String where, Path file) {

        /**
         * A quote as it is on a day.
         *
         * @param last its last day
         */
        public static Row of(BookedPaper paper, State state, Optional<LocalDate> last, LocalDate day) {
            return new Row(paper.number(), paper.kind(), paper.date(), state, last,
                    state == State.ISSUED && last.filter(day::isAfter).isPresent(),
                    paper.gross(), paper.where(), paper.file());
        }

        /** As a row of a table. */
        public List<String> cells() {
            return List.of(number, date.toString(), ConstantKey.words(kind.name()),
                    isLapsed ? "lapsed" : ConstantKey.of(state), validUntil.map(LocalDate::toString).orElse(""), where,
                    gross.map(sum -> sum.getCurrency().getCurrencyCode() + " "
                            + Amounts.plain(sum)).orElse(""));
        }
    }

    public QuoteList {
        papers = List.copyOf(papers);
    }
}
