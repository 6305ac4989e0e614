package icequill.web.agreement;

import icequill.answer.agreement.AgreementAnswer;
import icequill.life.agreement.AgreementEvent.Refusal;
import icequill.life.agreement.NoticeWay;
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
import java.util.Optional;

/** Notes that a customer does not want his agreement to go on after its term. */
public final class AgreementRefusal implements Page, FormPage {

    /** What its page shows. */
    public record Shown(AgreementAnswer agreement, List<String> ways, TypedFields typed) {
        public Shown {
            ways = List.copyOf(ways);
        }
    }

    @Override
    public Answer answer(Asked asked) {
        return again(asked, List.of());
    }

    @Override
    public Validated<String> done(Asked asked) {
        Problems problems = new Problems();
        NoticeForm form = new NoticeForm(asked, problems);
        LocalDate day = form.day();
        Optional<NoticeWay> way = form.way();
        return problems.or(() -> new Refusal(day, way.orElseThrow(), asked.text("who"), asked.text("words")))
                .then(refusal -> AgreementPage.office(asked).note(asked.part("number"), refusal, form.seen()))
                .map(sheet -> Paths.agreement(sheet.data().agreement()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return Answer.of(AgreementPage.office(asked).show(asked.part("number")),
                sheet -> new Answer.Shown("agreement-refuse", new Shown(sheet.data(), NoticeForm.WAYS,
                        new TypedFields(asked.fields(), problems)), sheet.data()));
    }
}
