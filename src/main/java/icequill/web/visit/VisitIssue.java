package icequill.web.visit;

import icequill.office.asking.KnownVisits;
import icequill.office.billing.IssueOptions;
import icequill.office.billing.VisitBilling;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.FormName;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import java.util.List;
import java.util.Optional;

/** Issues the invoice of a visit that the book has, unless it was changed since its price was shown. */
public final class VisitIssue implements FormPage {

    @Override
    public Validated<String> done(Asked asked) {
        String visit = asked.part("visit");
        return asked.text("version")
                .map(version -> new KnownVisits(asked.book()).unchanged(visit, version))
                .orElseGet(() -> Validated.valid(visit))
                .then(same -> VisitBilling.of(asked.book()).issue(new FormName.InBook(visit),
                        new IssueOptions(asked.reader().today(), Optional.empty())))
                .map(paper -> Paths.paper(paper.number()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return VisitPage.page(asked, problems, TypedFields.NONE);
    }
}
