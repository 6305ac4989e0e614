package icequill.web.visit;

import icequill.answer.WithdrawnVisit;
import icequill.answer.history.VisitAnswer;
import icequill.office.billing.RecordOffice;
import icequill.office.care.HistoryOffice;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import java.util.List;
import java.util.Optional;

/** Takes a visit back that is not to be billed. */
public final class VisitWithdrawal implements Page, FormPage {

    private static final String REASON = "reason";

    /** What its page shows. */
    public record Shown(VisitAnswer visit, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        return page(asked, TypedFields.NONE);
    }

    @Override
    public Validated<String> done(Asked asked) {
        return RecordOffice.of(asked.book()).withdraw(asked.part("visit"), asked.text(REASON).orElse(""))
                .map(WithdrawnVisit::visit).map(Paths::visit);
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return page(asked, new TypedFields(asked.fields(), asked.text(REASON).isPresent()
                ? problems
                : problems.stream().map(problem -> new Problem(problem.code(), new Place("", 0, REASON),
                        problem.message(), "")).toList()));
    }

    private static Answer page(Asked asked, TypedFields typed) {
        return Answer.of(
                HistoryOffice.of(asked.book()).visit(asked.part("visit"), Optional.of(asked.reader().language())),
                found -> new Answer.Shown("visit-withdraw", new Shown(found.data(), typed), found.data()));
    }
}
