package icequill.planner.kept;

import icequill.planner.Crew;
import icequill.planner.Effort;
import icequill.planner.Planner;
import icequill.planner.Timetable;
import icequill.planner.VisitWork;
import icequill.problem.Validated;
import java.util.Optional;

/**
 * Gives the timetable that {@link Planner} finds, from a shelf where it was found before, for whichever site. That a visit cannot be planned is found out
 * anew each time, since its report says where it was asked.
 */
public record KeptTimetables(Shelf shelf) {

    /** Like {@link Planner#timetable}. */
    public Validated<Timetable> timetable(VisitWork work, Crew crew, Effort effort) {
        VisitWork numbered = NumberedMachines.of(work);
        // One machine is planned sooner than its timetable is read from a shelf.
        Optional<String> asked = Optional.of(AskedWork.text(numbered, crew, effort))
                .filter(text -> work.walks().machines().size() > 1);
        Validated<String> found = asked.flatMap(shelf::text).map(Validated::valid)
                .orElseGet(() -> Planner.timetable(numbered, crew, effort).map(table -> {
                    String text = new TimetableText(numbered).of(table);
                    asked.ifPresent(question -> shelf.put(question, text));
                    return text;
                }));
        // A report of problems names machines as they are called.
        return found.problems().isEmpty()
                ? found.map(new TimetableText(work)::read)
                : Planner.timetable(work, crew, effort);
    }
}
