package icequill.web.agreement;

import icequill.answer.agreement.AgreementList;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;

/** Agreements as they stand, found by words. */
public final class AgreementsPage implements Page {

    /**
     * What its page shows.
     *
     * @param find what was looked for
     */
    public record Shown(AgreementList list, String find, boolean isAll) {}

    @Override
    public Answer answer(Asked asked) {
        String find = asked.text("find").orElse("");
        boolean all = asked.text("all").isPresent();
        return Answer.of(AgreementPage.office(asked).list(find, all),
                list -> new Answer.Shown("agreements", new Shown(list, find, all), list));
    }
}
