package icequill.planner.kept;

import icequill.planner.Crew;
import icequill.planner.Effort;
import icequill.planner.Planner;
import icequill.planner.Timetable;
import icequill.planner.VisitWork;
import icequill.problem.Validated;
import java.util.Optional;

/**
 * Gives the timetable that {@link Planner} finds, from a shelf where it was found before. That a visit cannot be planned is found out
 * anew each time, since its report says where it was asked.
 */
public record KeptTimetables(Shelf shelf) {

    /** Like {@link Planner#timetable}. */
    public Validated<Timetable> timetable(VisitWork work, Crew crew, Effort effort) {
        if (work.walks().machines().size() == 1) {
            // One machine is planned sooner than its timetable is read.
            return Planner.timetable(work, crew, effort);
        }
        String asked = AskedWork.text(work, crew, effort);
        TimetableText text = new TimetableText(work);
        Optional<Timetable> kept = shelf.text(asked).map(text::read);
        return kept.map(Validated::valid).orElseGet(() -> Planner.timetable(work, crew, effort).map(found -> {
            shelf.put(asked, text.of(found));
            return found;
        }));
    }
}
