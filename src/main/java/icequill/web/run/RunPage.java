package icequill.web.run;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;

/** How far long work is, and what it came to; it may be stopped. */
public final class RunPage implements Page {

    private final Runs runs;

    public RunPage(Runs runs) {
        this.runs = runs;
    }

    @Override
    public Answer answer(Asked asked) {
        return Answer.of("run", known(asked).map(Run::answer));
    }

    /** Asks it to stop: as often as somebody does, and without waiting for what the work itself holds. */
    public Page stopping() {
        return asked -> Answer.of(known(asked), run -> {
            run.stop();
            return new Answer.Gone("/runs/" + run.answer().id());
        });
    }

    private Validated<Run> known(Asked asked) {
        return runs.of(asked.part("run")).map(Validated::valid).orElseGet(() -> Validated.invalid(new Problem(
                Code.UNKNOWN_NAME, Place.NOWHERE, "this work is not known any more: the office was closed meanwhile",
                "what it had finished stands; begin it again for the rest")));
    }
}
