package icequill.web;

import icequill.answer.FitResult;
import icequill.office.FitOffice;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.render.view.FitSheetView;
import icequill.render.view.FitSheetView.Fitted;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.Optional;

/** How soon dirt stops machines, by the visits of the book or by a table that is typed, for the owner. */
final class FitPage implements Page {

    /** The field of the table; problems within it name it as their file. */
    private static final String TABLE = "table";

    /**
     * What its page shows.
     *
     * @param fitted empty where nothing could be fitted
     */
    public record Shown(Optional<Fitted> fitted, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        Problems problems = new Problems();
        LocalDate day = asked.day("on", problems).orElse(asked.reader().today());
        Validated<FitResult> fit = problems.or(() -> new PaperOptions(Optional.empty(), day,
                Optional.of(asked.reader().language()), Extras.NONE)).then(options -> fit(asked, options));
        return Answer.Shown.orProblems("fit",
                new Shown(fit.found().map(found -> FitSheetView.told(found.sheet()).fitted()),
                        new TypedFields(asked.fields(), fit.problems())),
                fit);
    }

    private static Validated<FitResult> fit(Asked asked, PaperOptions options) {
        FitOffice office = FitOffice.of(asked.book());
        return asked.text(TABLE).map(text -> office.typed(text, TABLE, options))
                .orElseGet(() -> office.book(options));
    }
}
