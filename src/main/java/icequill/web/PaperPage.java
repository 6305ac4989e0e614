package icequill.web;

import icequill.answer.shown.PaperSheet;
import icequill.office.care.ShowOffice;
import icequill.office.care.Shows;
import icequill.shop.FormName;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.util.Optional;

/** A paper of the book, and what can be done with it. */
final class PaperPage implements Page {

    @Override
    public Answer answer(Asked asked) {
        return Answer.of(ShowOffice.of(asked.book()).show(new FormName.InBook(asked.part("number")), Shows.PAPER,
                Optional.of(asked.reader().language())).map(shown -> shown.paper().orElseThrow()),
                PaperPage::page);
    }

    private static Answer page(PaperSheet sheet) {
        return new Answer.Shown("paper", sheet, sheet.data());
    }
}
