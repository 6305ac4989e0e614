package icequill.office.care;

import icequill.answer.PaidSheet;
import icequill.ledger.Reading;
import icequill.ledger.find.BillState;
import icequill.ledger.find.PaperFilter;
import icequill.ledger.papers.IssuedPaper;
import icequill.shop.BookedPapers;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Finds papers by the state of their bills. The book's sums do not have what is taken off for paying early, so that a bill which is
 * settled by it has a part that is not paid.
 *
 * @param most how many at most, from 1
 */
record BillSearch(Reading open, String text, int most) {

    /** How many more are looked at each time, where too few are left. */
    private static final int GROWTH = 4;

    /** The newest first. */
    List<IssuedPaper> find(PaperFilter filter) {
        return filter.state().map(state -> switch (state) {
        case OPEN, PART_PAID -> kept(filter, paper -> !isSettledEarly(paper));
        case PAID -> Stream
                .concat(open.papers().find(text, filter, most).stream(),
                        kept(filter.in(BillState.PART_PAID), this::isSettledEarly).stream())
                .sorted(Comparator.comparing(IssuedPaper::issuedAt).reversed()).limit(most).toList();
        case CREDITED -> open.papers().find(text, filter, most);
        }).orElseGet(() -> open.papers().find(text, filter, most));
    }

    private List<IssuedPaper> kept(PaperFilter filter, Predicate<IssuedPaper> keep) {
        int looked = most;
        List<IssuedPaper> found = open.papers().find(text, filter, looked);
        List<IssuedPaper> kept = found.stream().filter(keep).toList();
        while (kept.size() < most && found.size() == looked) {
            looked = Math.multiplyExact(looked, GROWTH);
            found = open.papers().find(text, filter, looked);
            kept = found.stream().filter(keep).toList();
        }
        return kept.stream().limit(most).toList();
    }

    private boolean isSettledEarly(IssuedPaper paper) {
        return BookedPapers.offersEarly(open, paper)
                && PaidSheet.of(open, paper, BookedPapers.paper(open, paper).found())
                        .filter(paid -> paid.discount().isPresent()).isPresent();
    }
}
