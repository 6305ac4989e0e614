package icequill.answer.history;

import icequill.answer.claim.ClaimSheet;
import java.util.List;

/**
 * One visit, and the papers that were issued for it.
 *
 * @param claims of what it did under a warranty
 * @param isUnclaimed whether it did something under a warranty, and nobody claimed it
 */
public record VisitAnswer(ToldVisit visit, List<ToldPaper> papers, List<ClaimSheet> claims, boolean isUnclaimed) {

    public VisitAnswer {
        papers = List.copyOf(papers);
        claims = List.copyOf(claims);
    }
}
