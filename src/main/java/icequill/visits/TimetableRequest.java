package icequill.visits;

import icequill.planner.Crew;
import icequill.planner.Effort;
import icequill.planner.Planner;
import icequill.planner.Timetable;
import icequill.problem.Code;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.work.Attendance;
import icequill.work.Qualification;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Plans a visit.
 *
 * @param people names of those who come
 * @param qualified what each of them is qualified for
 */
public record TimetableRequest(VisitContext hand, List<String> people, List<Set<Qualification>> qualified) {

    /**
     * For those whom the visit names, or for so many whose names are not known yet and who are taken to be qualified for all.
     *
     * @param crew how many; empty for those of the visit
     */
    public static TimetableRequest of(VisitContext hand, OptionalInt crew) {
        if (crew.isPresent()) {
            return new TimetableRequest(hand,
                    IntStream.rangeClosed(1, crew.getAsInt()).mapToObj(number -> "technician " + number).toList(),
                    Collections.nCopies(crew.getAsInt(), Set.of(Qualification.values())));
        }
        Map<String, Set<Qualification>> named = new LinkedHashMap<>();
        for (Attendance person : hand.visit().people()) {
            named.putIfAbsent(person.person(),
                    hand.rates().labor().grade(person.grade()).orElseThrow().qualified());
        }
        return new TimetableRequest(hand, List.copyOf(named.keySet()), List.copyOf(named.values()));
    }

    public Validated<Timetable> timetable() {
        return crew().then(crew -> VisitWorkAssembly.of(hand).work()
                .then(work -> Planner.timetable(work, crew, Effort.USUAL)));
    }

    private Validated<Crew> crew() {
        Problems problems = new Problems();
        if (people.isEmpty() || people.size() > Crew.MOST) {
            problems.add(Code.OUT_OF_RANGE, hand.visit().place(), people.size() + " people come",
                    "from 1 to " + Crew.MOST + " for a timetable");
        }
        return problems.or(() -> new Crew(qualified));
    }
}
