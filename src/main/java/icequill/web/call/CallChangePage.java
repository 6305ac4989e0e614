package icequill.web.call;

import icequill.answer.call.AtHand;
import icequill.answer.call.CallAnswer;
import icequill.office.call.CallOffice;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import java.util.List;
import java.util.function.Function;

/** Corrects what a call says, unless somebody else took a step since its page was shown. */
public final class CallChangePage implements Page, FormPage {

    /**
     * What its page shows.
     *
     * @param hand what is at hand of its site
     */
    public record Shown(CallAnswer call, AtHand hand, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        return page(asked, call -> new TypedFields(CallForm.fields(call), List.of()));
    }

    private static Answer page(Asked asked, Function<CallAnswer, TypedFields> typed) {
        CallOffice office = CallEntryPage.office(asked);
        return Answer.of(
                office.show(asked.part("call")).then(sheet -> office.atHand(sheet.data().site())
                        .map(hand -> new Shown(sheet.data(), hand.data(), typed.apply(sheet.data())))),
                shown -> new Answer.Shown("call-change", shown, shown.call()));
    }

    @Override
    public Validated<String> done(Asked asked) {
        return CallForm.changed(asked).told()
                .then(told -> CallEntryPage.office(asked).change(asked.part("call"), told, CallStep.seen(asked)))
                .map(sheet -> Paths.call(sheet.data().id()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return page(asked,
                call -> new TypedFields(asked.fields(), CallForm.changed(asked).atFields(problems)));
    }
}
