package icequill.web.visit;

import icequill.office.asking.KnownVisits;
import icequill.office.billing.IssueOffice;
import icequill.office.billing.IssueOptions;
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

/** Issues the quote of a repair that is planned, unless its visit was changed since it was shown. */
public final class VisitQuote implements FormPage {

    @Override
    public Validated<String> done(Asked asked) {
        String visit = asked.part("visit");
        return new KnownVisits(asked.book()).unchanged(visit, asked.text("version").orElse(""))
                .then(same -> IssueOffice.of(asked.book()).quote(new FormName.InBook(visit),
                        new IssueOptions(asked.reader().today(), Optional.empty())))
                .map(paper -> Paths.quote(paper.number()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return VisitPage.page(asked, problems, TypedFields.NONE);
    }
}
