package icequill.web;

import icequill.explain.ConstantKey;
import icequill.office.care.PaperOffice;
import icequill.problem.Validated;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Paths;

/** Makes sure that the file of a paper is there as it was issued. */
final class ReprintForm implements FormPage {

    @Override
    public Validated<String> done(Asked asked) {
        return PaperOffice.of(asked.book()).reprint(asked.part("number"))
                .map(made -> Paths.paper(made.number()) + "?file=" + ConstantKey.of(made.way()));
    }
}
