package icequill.web;

import icequill.answer.register.SiteList;
import icequill.office.register.RegisterLists;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;

/** The sites that have a text somewhere. */
final class SitesPage implements Page {

    /**
     * What its page shows.
     *
     * @param find what was looked for
     */
    public record Shown(String find, SiteList list) {}

    @Override
    public Answer answer(Asked asked) {
        String find = asked.text("find").orElse("");
        return Answer.of(RegisterLists.of(asked.book()).sites(find),
                list -> new Answer.Shown("sites", new Shown(find, list), list));
    }
}
