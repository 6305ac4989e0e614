package icequill.web.offer;

import icequill.answer.job.JobSheet;
import icequill.life.job.JobEvent;
import icequill.life.job.JobEvent.Dropped;
import icequill.life.job.JobEvent.Finished;
import icequill.life.job.JobEvent.PartsOrdered;
import icequill.life.job.JobEvent.Readied;
import icequill.office.quoting.JobOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** An accepted repair: where it stands, and what may happen next. */
public final class JobPage implements Page, FormPage {

    private static final String DAY = "day";
    private static final String EXPECTED = "expected";
    private static final String VISIT = "visit";

    /** What its page shows. */
    public record Shown(JobSheet job, TypedFields typed) {}

    @Override
    public Answer answer(Asked asked) {
        return page(asked, TypedFields.NONE);
    }

    @Override
    public Validated<String> done(Asked asked) {
        return event(asked).then(event -> JobOffice.of(asked.book()).note(asked.part("number"), event))
                .map(job -> Paths.job(job.quote()));
    }

    private static Validated<JobEvent> event(Asked asked) {
        Problems problems = new Problems();
        LocalDate day = asked.day(DAY, problems).orElse(asked.reader().today());
        Optional<LocalDate> expected = asked.day(EXPECTED, problems);
        String what = asked.text("what").orElse("");
        if (what.equals("done") && asked.text(VISIT).isEmpty()) {
            problems.add(Code.MISSING, new Place("", 0, VISIT), "nothing says on which visit", "the id of a visit");
        }
        return problems.or(() -> what).then(valid -> switch (what) {
        case "order" -> Validated.valid(new PartsOrdered(day, asked.text("supplier"), expected));
        case "ready" -> Validated.valid(new Readied(day));
        case "done" -> Validated.valid(new Finished(day, asked.text(VISIT).orElseThrow()));
        case "withdraw" -> Validated.valid(new Dropped(day, asked.text("reason")));
        default -> Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "nothing is chosen", ""));
        });
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return page(asked, new TypedFields(asked.fields(), problems));
    }

    static Answer page(Asked asked, TypedFields typed) {
        return Answer.of(JobOffice.of(asked.book()).job(asked.part("number")),
                job -> new Answer.Shown("job", new Shown(job, typed), job));
    }
}
