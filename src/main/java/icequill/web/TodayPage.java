package icequill.web;

import icequill.office.care.TodayOffice;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.util.Optional;

/** What waits for somebody today. */
final class TodayPage implements Page {

    @Override
    public Answer answer(Asked asked) {
        return Answer.ofSheet("today", TodayOffice.of(asked.book()).on(asked.reader().today(),
                Optional.of(asked.reader().language())));
    }
}
