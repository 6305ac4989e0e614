package icequill.web.claim;

import icequill.answer.claim.ClaimList;
import icequill.office.claim.ClaimOffice;
import icequill.problem.Code;
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

/** Claims, and visits whose work under a warranty nobody claimed; notes the claim of one of them. */
public final class ClaimsPage implements Page, FormPage {

    /** What its page shows. */
    public record Shown(ClaimList list, boolean isAll, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        return page(asked, TypedFields.NONE);
    }

    @Override
    public Validated<String> done(Asked asked) {
        return asked.text("visit").<Validated<String>>map(Validated::valid)
                .orElseGet(() -> Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "nothing is chosen", "")))
                .then(visit -> ClaimOffice.of(asked.book()).note(visit, asked.reader().today()))
                .map(list -> Paths.claim(list.claims().getFirst().claim()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return page(asked, new TypedFields(asked.fields(), problems));
    }

    private static Answer page(Asked asked, TypedFields typed) {
        boolean all = asked.text("all").isPresent();
        return Answer.of(ClaimOffice.of(asked.book()).claims(all),
                list -> new Answer.Shown("claims", new Shown(list, all, typed), list));
    }
}
