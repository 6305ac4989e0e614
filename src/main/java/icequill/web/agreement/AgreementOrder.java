package icequill.web.agreement;

import icequill.answer.agreement.AgreementAnswer;
import icequill.life.agreement.AgreementEvent.Ordered;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.List;

/** Notes the purchase order that stands for whatever an agreement bills from a day on. */
public final class AgreementOrder implements Page, FormPage {

    /** What its page shows. */
    public record Shown(AgreementAnswer agreement, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        return again(asked, List.of());
    }

    @Override
    public Validated<String> done(Asked asked) {
        Problems problems = new Problems();
        NoticeForm form = new NoticeForm(asked, problems);
        LocalDate today = asked.reader().today();
        LocalDate from = form.day("from").orElse(today);
        return problems.or(() -> new Ordered(today, from, asked.text("order"), asked.text("who")))
                .then(order -> AgreementPage.office(asked).note(asked.part("number"), order, form.seen()))
                .map(sheet -> Paths.agreement(sheet.data().agreement()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return Answer.of(AgreementPage.office(asked).show(asked.part("number")),
                sheet -> new Answer.Shown("agreement-order",
                        new Shown(sheet.data(), new TypedFields(asked.fields(), problems)), sheet.data()));
    }
}
