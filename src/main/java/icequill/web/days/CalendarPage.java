package icequill.web.days;

import icequill.answer.days.CalendarSheet;
import icequill.office.days.CalendarOffice;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;

/** The planned visits of a person, on a page and as a calendar for his phone. */
public final class CalendarPage implements Page {

    private static final String PERSON = "person";

    @Override
    public Answer answer(Asked asked) {
        return Answer.of(calendar(asked), sheet -> new Answer.Shown("calendar", sheet, sheet.data()));
    }

    /** The file. */
    public static Answer file(Asked asked) {
        return Answer.of(calendar(asked), sheet -> new Answer.Calendar(
                new String(sheet.calendar(), StandardCharsets.UTF_8), "visits.ics"));
    }

    private static Validated<CalendarSheet> calendar(Asked asked) {
        LocalDate today = asked.reader().today();
        return CalendarOffice.of(asked.book()).calendar(asked.part(PERSON), today,
                CalendarOffice.usualUntil(today), Optional.of(asked.reader().language()));
    }
}
