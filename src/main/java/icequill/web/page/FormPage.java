package icequill.web.page;

import icequill.problem.Problem;
import icequill.problem.Validated;
import java.util.List;

/** Does what a form asks for. */
public interface FormPage {

    /** Does it, within the one transaction of its book, and gives the address that shows what was made. */
    Validated<String> done(Asked asked);

    /** What is shown where it could not be done, with all that was typed. */
    default Answer again(Asked asked, List<Problem> problems) {
        return new Answer.Refused(problems);
    }
}
