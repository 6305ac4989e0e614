package icequill.web.call;

import icequill.answer.call.CallSheet;
import icequill.office.call.CallOffice;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Takes a call a step further, unless somebody else did since its page was shown. */
public final class CallStep implements FormPage {

    /** Says who goes there and when. */
    public static final CallStep PLAN = new CallStep(CallForm::planned, CallOffice::plan);
    /** Records who allows more. */
    public static final CallStep APPROVE = new CallStep(CallForm::approved, CallOffice::approve);
    /** Withdraws it with a reason. */
    public static final CallStep WITHDRAW = new CallStep(CallForm::withdrawn, CallOffice::withdraw);
    /** Closes it. */
    public static final CallStep CLOSE = new CallStep(CallForm::closed,
            (office, call, told, seen) -> office.close(call, seen));

    private final Function<Asked, CallForm> form;
    private final Doing doing;

    /** What the office does with what was typed. */
    private interface Doing {
        Validated<CallSheet> with(CallOffice office, String call, Map<String, String> told, Optional<Integer> seen);
    }

    private CallStep(Function<Asked, CallForm> form, Doing doing) {
        this.form = form;
        this.doing = doing;
    }

    @Override
    public Validated<String> done(Asked asked) {
        return form.apply(asked).told().then(
                told -> doing.with(CallEntryPage.office(asked), asked.part("call"), told, seen(asked)))
                .map(sheet -> Paths.call(sheet.data().id()));
    }

    /** How many steps there were when its page was shown. */
    static Optional<Integer> seen(Asked asked) {
        return asked.text("seen").filter(text -> text.matches("[0-9]{1,6}")).map(Integer::valueOf);
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return CallPage.page(asked, new TypedFields(asked.fields(), form.apply(asked).atFields(problems)));
    }
}
