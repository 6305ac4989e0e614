package icequill.web.offer;

import icequill.office.quoting.JobOffice;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;

/** Repairs that were recommended and are not done, the oldest first. */
public final class RecommendedPage implements Page {

    @Override
    public Answer answer(Asked asked) {
        return Answer.of("recommended", JobOffice.of(asked.book()).recommended(asked.text("site")));
    }
}
