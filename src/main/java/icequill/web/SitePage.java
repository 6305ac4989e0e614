package icequill.web;

import icequill.answer.history.SiteHistory;
import icequill.answer.site.SiteCard;
import icequill.office.care.AskedPeriod;
import icequill.office.care.HistoryOffice;
import icequill.office.care.SiteOffice;
import icequill.party.Language;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.util.Optional;

/** A site: who pays, whom to call, its machines, what is due, and what was done. */
final class SitePage implements Page {

    /** What is told of a site. */
    public record SiteAnswer(SiteCard card, SiteHistory history) {}

    @Override
    public Answer answer(Asked asked) {
        String id = asked.part("site");
        Optional<Language> language = Optional.of(asked.reader().language());
        AskedPeriod period = new AskedPeriod(asked.month(), Optional.empty(), Optional.empty());
        return Answer.of("site", SiteOffice.of(asked.book()).card(id, asked.reader().today(), language)
                .then(card -> HistoryOffice.of(asked.book()).site(id, asked.text("machine"), period, language)
                        .map(history -> new SiteAnswer(card.data(), history.data()))));
    }
}
