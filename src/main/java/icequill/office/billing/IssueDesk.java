package icequill.office.billing;

import icequill.document.Paper;
import icequill.ledger.Transaction;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperKind;
import icequill.office.writing.PaperIssuer;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import java.util.function.Function;

/** Gives papers their numbers, in the order of their days. */
record IssueDesk(IssueDates dates, PaperIssuer issuer) {

    static IssueDesk of(ShopBook book) {
        return new IssueDesk(new IssueDates(book), PaperIssuer.of(book));
    }

    /** @param paper as it is under its number */
    Validated<IssuedPaper> issue(Transaction open, PaperKind kind, IssueOptions wish, Origin origin,
            Function<String, Validated<? extends Paper>> paper) {
        return dates.issue(open, kind, wish.date(), wish.booking().backdate(),
                () -> issuer.issue(open, kind, wish.date(), origin, paper));
    }
}
