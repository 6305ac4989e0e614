package icequill.web.offer;

import icequill.office.billing.IssueOptions;
import icequill.office.billing.StageBilling;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.tax.Stage;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import java.util.List;
import java.util.Optional;

/** Bills a part of an accepted repair. */
public final class JobStageForm implements FormPage {

    @Override
    public Validated<String> done(Asked asked) {
        return kind(asked).then(kind -> StageBilling.of(asked.book()).issue(asked.part("number"), kind,
                new IssueOptions(asked.reader().today(), Optional.empty())))
                .map(paper -> Paths.paper(paper.number()));
    }

    private static Validated<Stage.Kind> kind(Asked asked) {
        return switch (asked.text("kind").orElse("")) {
        case "deposit" -> Validated.valid(Stage.Kind.DEPOSIT);
        case "progress" -> Validated.valid(Stage.Kind.PROGRESS);
        case "release" -> Validated.valid(Stage.Kind.RELEASE);
        default -> Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "nothing is chosen", ""));
        };
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return JobPage.page(asked, new TypedFields(asked.fields(), problems));
    }
}
