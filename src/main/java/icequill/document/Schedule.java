package icequill.document;

import icequill.explain.Phrase;
import icequill.party.Machine;
import icequill.problem.Check;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/**
 * The timetable of a planned visit as its technicians read it; the turns of the steps stand with the steps.
 *
 * @param minutes until everything is done, waits included
 * @param bound no timetable for these people is shorter; at most {@code minutes}
 * @param walking minutes of all people together
 * @param people names, by their numbers
 * @param alarms by time
 * @param remarks where it needs more time than there is, and what else must be known
 */
public record Schedule(ZonedDateTime begins, int minutes, int bound, int walking, List<String> people,
        List<Alarm> alarms, List<Phrase> remarks) {

    /**
     * The end of a wait, when somebody must be at the machine again.
     *
     * @param latest where a chemical must be flushed out: by when
     * @param waited what passed by itself, in the paper's language
     * @param next what follows at the machine; empty when nothing does
     */
    public record Alarm(ZonedDateTime rings, Optional<ZonedDateTime> latest, Machine machine, String waited,
            Optional<Next> next) {}

    /**
     * What is done after a wait.
     *
     * @param step in the paper's language
     * @param starts when, by the timetable; not before the alarm rings
     * @param people who does it, by number
     * @param spare minutes by which it may begin later without a longer visit or a limit broken
     */
    public record Next(String step, ZonedDateTime starts, List<Integer> people, int spare) {
        public Next {
            people = List.copyOf(people);
        }
    }

    public Schedule {
        people = List.copyOf(people);
        alarms = List.copyOf(alarms);
        remarks = List.copyOf(remarks);
        Check.inRange(bound, 0, minutes, "bound");
    }

    /** A minute of the timetable as time of day. */
    public ZonedDateTime at(int minute) {
        return begins.plusMinutes(minute);
    }
}
