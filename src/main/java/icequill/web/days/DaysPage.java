package icequill.web.days;

import icequill.answer.days.DayProposals.Proposal;
import icequill.answer.days.DaysSheet;
import icequill.office.days.ChosenDay;
import icequill.office.days.DaysOffice;
import icequill.office.days.DueOffice;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import icequill.web.page.TypedMoment;
import icequill.web.page.TypedTime;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Days proposed for the visits that are due, changed as somebody likes and stored as planned visits. */
public final class DaysPage implements Page, FormPage {

    private static final String FROM = "from";
    private static final String UNTIL = "until";
    private static final String ROW = "visit-";

    /**
     * What its page shows.
     *
     * @param sheet empty where the days cannot be read
     * @param isAgain whether it was sent and could not be stored
     */
    public record Shown(Optional<DaysSheet> sheet, boolean isAgain, TypedFields typed) {

        /** What stands in a field: what was typed, or what is proposed. */
        public String value(String field, String proposed) {
            return isAgain ? typed.value(field) : proposed;
        }

        /** Whether the box of a row is ticked. */
        public boolean takes(int row, Proposal visit) {
            return !isAgain || typed.has(ROW + row, visit.key());
        }
    }

    /** The days that are asked for. */
    private record Span(LocalDate from, LocalDate until) {}

    @Override
    public Answer answer(Asked asked) {
        return page(asked, false, List.of());
    }

    private static Answer page(Asked asked, boolean isAgain, List<Problem> problems) {
        Validated<DaysSheet> days = span(asked).then(span -> DaysOffice.of(asked.book()).propose(span.from(),
                span.until(), List.of(), Optional.of(asked.reader().language())));
        List<Problem> all = new ArrayList<>(problems);
        all.addAll(days.problems());
        return Answer.Shown.orProblems("days",
                new Shown(days.found(), isAgain, new TypedFields(asked.fields(), all)), days.map(DaysSheet::data));
    }

    private static Validated<Span> span(Asked asked) {
        Problems problems = new Problems();
        LocalDate from = asked.day(FROM, problems).orElse(asked.reader().today().plusDays(1));
        LocalDate until = asked.day(UNTIL, problems).orElse(DueOffice.usualUntil(from));
        return problems.or(() -> new Span(from, until));
    }

    @Override
    public Validated<String> done(Asked asked) {
        Problems problems = new Problems();
        List<Integer> rows = IntStream.range(0, new TypedFields(asked.fields(), List.of()).rows(ROW, "")).boxed()
                .filter(row -> asked.text(ROW + row).isPresent()).toList();
        List<ChosenDay> chosen = rows.stream().flatMap(row -> chosen(asked, row, problems).stream()).toList();
        if (rows.isEmpty()) {
            problems.add(Code.MISSING, Place.NOWHERE, "no visit is ticked", "at least one that is to be stored");
        }
        return problems.or(() -> chosen).then(all -> span(asked).then(span -> DaysOffice.of(asked.book())
                .store(all, span.from(), span.until()).map(ids -> "/today/visits")));
    }

    private static Optional<ChosenDay> chosen(Asked asked, int row, Problems problems) {
        Optional<LocalDate> day = asked.day("day-" + row, problems);
        Optional<TypedTime> time = asked.text("at-" + row)
                .flatMap(text -> problems.take(TypedMoment.time(text, "at-" + row)));
        if (asked.text("day-" + row).isEmpty() || asked.text("at-" + row).isEmpty()) {
            problems.add(Code.MISSING, new Place("", 0, (asked.text("day-" + row).isEmpty() ? "day-" : "at-") + row),
                    "nothing says when", "a day and a time");
        }
        return day.flatMap(on -> time.map(at -> new ChosenDay(row, asked.text(ROW + row).orElse(""), on, at.time(),
                people(asked, row))));
    }

    private static List<String> people(Asked asked, int row) {
        String field = "person-" + row + "-";
        return IntStream.range(0, new TypedFields(asked.fields(), List.of()).rows(field, ""))
                .mapToObj(one -> asked.text(field + one).orElse("")).toList();
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return page(asked, true, problems);
    }
}
