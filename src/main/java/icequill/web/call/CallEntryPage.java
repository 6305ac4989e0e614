package icequill.web.call;

import icequill.answer.call.AtHand;
import icequill.answer.register.SiteList;
import icequill.office.call.CallOffice;
import icequill.office.register.RegisterLists;
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

/** Takes a call on the telephone: which site, and then all of it on one page, with what is at hand beside it. */
public final class CallEntryPage implements Page, FormPage {

    private static final String SITE = "site";

    /** What its page shows of a site. */
    public record Shown(AtHand hand, TypedFields typed) {}

    /**
     * The sites that somebody may mean.
     *
     * @param find what was looked for
     */
    public record Sites(String find, SiteList list) {}

    @Override
    public Answer answer(Asked asked) {
        return asked.text(SITE).map(site -> page(asked, site, TypedFields.NONE)).orElseGet(() -> sites(asked));
    }

    private static Answer sites(Asked asked) {
        String find = asked.text("find").orElse("");
        return Answer.of(RegisterLists.of(asked.book()).sites(find),
                list -> new Answer.Shown("call-site", new Sites(find, list), list));
    }

    private static Answer page(Asked asked, String site, TypedFields typed) {
        return Answer.of(office(asked).atHand(site),
                sheet -> new Answer.Shown("call-new", new Shown(sheet.data(), typed), sheet.data()));
    }

    @Override
    public Validated<String> done(Asked asked) {
        return CallForm.taken(asked).told()
                .then(told -> office(asked).take(asked.text(SITE).orElse(""), told))
                .map(taken -> Paths.call(taken.call().data().id()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return page(asked, asked.text(SITE).orElse(""),
                new TypedFields(asked.fields(), CallForm.taken(asked).atFields(problems)));
    }

    static CallOffice office(Asked asked) {
        return CallOffice.of(asked.book(), Optional.of(asked.reader().language()));
    }
}
