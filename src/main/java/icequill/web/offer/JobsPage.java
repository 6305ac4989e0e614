package icequill.web.offer;

import icequill.answer.job.JobList;
import icequill.office.quoting.JobOffice;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;

/** Accepted repairs, those that wait longest first. */
public final class JobsPage implements Page {

    /** What its page shows. */
    public record Shown(JobList list, boolean isAll) {}

    @Override
    public Answer answer(Asked asked) {
        boolean all = asked.text("all").isPresent();
        return Answer.of(JobOffice.of(asked.book()).jobs(all),
                list -> new Answer.Shown("jobs", new Shown(list, all), list));
    }
}
