package icequill.web.call;

import icequill.answer.call.CallAnswer;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;

/** A call: who called and why, whether somebody came in time, and what can be done with it next. */
public final class CallPage implements Page {

    /**
     * What its page shows.
     *
     * @param typed what was typed of its next step
     */
    public record Shown(CallAnswer call, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        return page(asked, TypedFields.NONE);
    }

    static Answer page(Asked asked, TypedFields typed) {
        return Answer.of(CallEntryPage.office(asked).show(asked.part("call")),
                sheet -> new Answer.Shown("call", new Shown(sheet.data(), typed), sheet.data()));
    }
}
