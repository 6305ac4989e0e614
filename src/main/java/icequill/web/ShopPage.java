package icequill.web;

import icequill.office.care.SettingsOffice;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;

/** How the shop is set up. */
final class ShopPage implements Page {

    @Override
    public Answer answer(Asked asked) {
        return Answer.of("shop", SettingsOffice.of(asked.book()).show());
    }
}
