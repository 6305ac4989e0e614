package icequill.web;

import icequill.answer.call.CallListing;
import icequill.answer.history.SiteHistory;
import icequill.answer.job.RecommendedRepairs;
import icequill.answer.site.SiteCard;
import icequill.office.call.CallListOffice;
import icequill.office.call.CallWish;
import icequill.office.care.AskedPeriod;
import icequill.office.care.HistoryOffice;
import icequill.office.care.SiteOffice;
import icequill.office.quoting.JobOffice;
import icequill.party.Language;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.util.Optional;
import java.util.Set;

/** A site: who pays, whom to call, its machines, what is due, and what was done. */
final class SitePage implements Page {

    private static final int LAST_CALLS = 5;

    /** What is told of a site. */
    public record SiteAnswer(SiteCard card, CallListing calls, RecommendedRepairs repairs, SiteHistory history) {}

    @Override
    public Answer answer(Asked asked) {
        String id = asked.part("site");
        Optional<Language> language = Optional.of(asked.reader().language());
        AskedPeriod period = new AskedPeriod(asked.month(), Optional.empty(), Optional.empty());
        CallWish calls = new CallWish(Optional.of(id), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), AskedPeriod.EVER, Set.of(), LAST_CALLS);
        return Answer.of("site", SiteOffice.of(asked.book()).card(id, asked.reader().today(), language)
                .then(card -> CallListOffice.of(asked.book()).calls(calls, language)
                        .then(called -> JobOffice.of(asked.book()).recommended(Optional.of(id))
                                .then(repairs -> HistoryOffice.of(asked.book())
                                        .site(id, asked.text("machine"), period, language)
                                        .map(history -> new SiteAnswer(card.data(), called.data(), repairs,
                                                history.data()))))));
    }
}
