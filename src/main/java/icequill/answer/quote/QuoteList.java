package icequill.answer.quote;

import icequill.answer.BookedPaper;
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
    public static final List<String> HEAD = List.of("number", "date", "paper", "last day", "for", "total");

    /**
     * One of them.
     *
     * @param validUntil the last day on which its prices hold; missing where its data cannot be read, which an audit tells
     * @param isLapsed whether that day has gone by
     * @param gross missing for one with choices
     * @param where customer, store and address
     * @param file where its PDF lies
     */
    public record Row(String number, PaperKind kind, LocalDate date, Optional<LocalDate> validUntil, boolean isLapsed,
            Optional<MonetaryAmount> gross, String where, Path file) {

        /**
         * A quote as it is on a day.
         *
         * @param last its last day
         */
        public static Row of(BookedPaper paper, Optional<LocalDate> last, LocalDate day) {
            return new Row(paper.number(), paper.kind(), paper.date(), last, last.filter(day::isAfter).isPresent(),
                    paper.gross(), paper.where(), paper.file());
        }

        /** As a row of a table. */
        public List<String> cells() {
            return List.of(number, date.toString(), ConstantKey.words(kind.name()),
                    validUntil.map(day -> day + (isLapsed ? ", lapsed" : "")).orElse(""), where,
                    gross.map(sum -> sum.getCurrency().getCurrencyCode() + " "
                            + Amounts.plain(sum)).orElse(""));
        }
    }

    public QuoteList {
        papers = List.copyOf(papers);
    }
}
