package icequill.visits;

import icequill.explain.Phrase;
import icequill.planner.Timetable;
import java.util.List;

/**
 * A visit, or one day of it, as it is planned.
 *
 * @param day which day of the visit it is, from 1
 * @param remarks on the way to it, or what is done on the day
 */
public record Stop(TimetableRequest planning, Timetable table, int day, List<Phrase> remarks) {
    public Stop {
        remarks = List.copyOf(remarks);
    }

    /** The visit by id, with the number of the day but for the first. */
    public String name() {
        return planning.hand().visit().id() + (day == 1 ? "" : "-day-" + day);
    }
}
