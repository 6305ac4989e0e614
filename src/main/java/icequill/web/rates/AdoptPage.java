package icequill.web.rates;

import icequill.answer.rates.AdoptedRates;
import icequill.office.care.RatesOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;

/** Puts the rates of the folder into force; it shows first what that changes. */
public final class AdoptPage implements Page, FormPage {

    @Override
    public Answer answer(Asked asked) {
        return Answer.of("rates-adopt", RatesOffice.of(asked.book()).adopt(false));
    }

    @Override
    public Validated<String> done(Asked asked) {
        RatesOffice office = RatesOffice.of(asked.book());
        return office.adopt(false).then(would -> unchanged(asked, would)).then(same -> office.adopt(true))
                .map(done -> "/rates/versions");
    }

    /** Files may have been written since the page was shown. */
    private static Validated<AdoptedRates> unchanged(Asked asked, AdoptedRates would) {
        return asked.text("version").filter(would.version()::equals).isPresent()
                ? Validated.valid(would)
                : Validated.invalid(new Problem(Code.CHANGED_MEANWHILE, Place.NOWHERE,
                        "the files of the rates were changed since this page was shown",
                        "look what they are now, then once more"));
    }
}
