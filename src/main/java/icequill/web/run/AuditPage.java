package icequill.web.run;

import icequill.office.care.BookMaintenance;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import java.util.List;
import java.util.OptionalLong;

/** Has the whole book looked at. */
public final class AuditPage implements Page, FormPage {

    private final Runs runs;

    public AuditPage(Runs runs) {
        this.runs = runs;
    }

    @Override
    public Answer answer(Asked asked) {
        return new Answer.Shown("audit", RunKind.AUDIT, RunKind.AUDIT);
    }

    @Override
    public Validated<String> done(Asked asked) {
        return Validated.valid(runs.begin(RunKind.AUDIT, OptionalLong.empty(),
                (shop, progress) -> BookMaintenance.of(shop).audit(List.of(), progress).map(RunResult.Audited::new)));
    }
}
