package icequill.answer.paper;

import icequill.answer.BookedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.problem.Problem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A paper that would be issued.
 *
 * @param gross as of {@link BookedPaper}
 * @param where customer, store and address
 */
public record UnnumberedPaper(PaperKind kind, LocalDate date, Optional<LocalDate> due, Optional<MonetaryAmount> gross,
        String where, Optional<String> corrects, Optional<String> replaces, List<Problem> notices) {

    static UnnumberedPaper of(BookedPaper paper) {
        return new UnnumberedPaper(paper.kind(), paper.date(), paper.due(), paper.gross(), paper.where(),
                paper.corrects(), paper.replaces(), paper.notices());
    }
}
