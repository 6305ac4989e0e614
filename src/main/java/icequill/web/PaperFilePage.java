package icequill.web;

import icequill.office.care.PaperOffice;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;

/** The PDF of a paper, as it was issued. */
final class PaperFilePage implements Page {

    @Override
    public Answer answer(Asked asked) {
        return Answer.of(PaperOffice.of(asked.book()).file(asked.part("number")),
                file -> new Answer.Sent(file.pdf(), file.number() + ".pdf"));
    }
}
