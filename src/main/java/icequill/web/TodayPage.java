package icequill.web;

import icequill.answer.today.DayAnswer;
import icequill.office.care.TodayOffice;
import icequill.web.offer.QuoteDraft;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import icequill.web.visit.VisitDraft;
import java.util.Optional;

/** What waits for somebody today. */
final class TodayPage implements Page {

    /**
     * What its page shows.
     *
     * @param visits that somebody began to type and did not store
     * @param quotes that somebody began and did not issue
     */
    public record Shown(DayAnswer waiting, int visits, int quotes) {}

    @Override
    public Answer answer(Asked asked) {
        return Answer.of(
                TodayOffice.of(asked.book()).on(asked.reader().today(), Optional.of(asked.reader().language())),
                sheet -> new Answer.Shown("today", new Shown(sheet.data(), VisitDraft.all(asked).size(),
                        QuoteDraft.all(asked).size()), sheet.data()));
    }
}
