package icequill.web.agreement;

import icequill.answer.agreement.AgreementAnswer;
import icequill.office.agreement.AgreementLifeOffice;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.util.Optional;

/** An agreement: how it stands, what is billed and done, and what can be done with it. */
public final class AgreementPage implements Page {

    @Override
    public Answer answer(Asked asked) {
        return Answer.of(office(asked).show(asked.part("number")),
                sheet -> new Answer.Shown("agreement", new Shown(sheet.data()), sheet.data()));
    }

    /** What its page shows. */
    public record Shown(AgreementAnswer agreement) {}

    static AgreementLifeOffice office(Asked asked) {
        return AgreementLifeOffice.of(asked.book(), Optional.of(asked.reader().language()));
    }
}
