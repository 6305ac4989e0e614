package icequill.web.days;

import icequill.answer.days.DueSheet;
import icequill.office.days.DueOffice;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.Optional;

/** Visits that are due, by week and by person. */
public final class DueVisitsPage implements Page {

    private static final String UNTIL = "until";

    /**
     * What its page shows.
     *
     * @param sheet empty where the day cannot be read
     */
    public record Shown(Optional<DueSheet> sheet, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        LocalDate today = asked.reader().today();
        Validated<LocalDate> until = asked.day(UNTIL, DueOffice.usualUntil(today));
        Validated<DueSheet> due = until.then(day -> DueOffice.of(asked.book()).due(today, day,
                Optional.of(asked.reader().language())));
        return Answer.Shown.orProblems("due-visits",
                new Shown(due.found(), new TypedFields(asked.fields(), due.problems())), due.map(DueSheet::data));
    }
}
