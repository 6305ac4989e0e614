package icequill.visits;

import icequill.planner.Crew;
import icequill.planner.Effort;
import icequill.planner.Planner;
import icequill.planner.Progress;
import icequill.planner.Timetable;
import icequill.problem.Code;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.TickedTimes;
import icequill.work.Attendance;
import icequill.work.Qualification;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Plans a visit.
 *
 * @param people names of those who come
 * @param members each of them, by the same numbers
 * @param progress of a visit that runs; empty of one to come
 */
public record TimetableRequest(VisitContext hand, List<String> people, List<Crew.Member> members,
        Optional<Progress> progress) {

    /**
     * For those whom the visit names, or for so many whose names are not known yet and who are taken to be qualified for all.
     *
     * @param crew how many; empty for those of the visit
     */
    public static TimetableRequest of(VisitContext hand, OptionalInt crew) {
        if (crew.isPresent()) {
            return new TimetableRequest(hand,
                    IntStream.rangeClosed(1, crew.getAsInt()).mapToObj(number -> "technician " + number).toList(),
                    Collections.nCopies(crew.getAsInt(), new Crew.Member(Set.of(Qualification.values()))),
                    Optional.empty());
        }
        Map<String, Crew.Member> named = new LinkedHashMap<>();
        for (Attendance person : hand.visit().people()) {
            named.putIfAbsent(person.person(), member(person, hand));
        }
        return new TimetableRequest(hand, List.copyOf(named.keySet()), List.copyOf(named.values()), Optional.empty());
    }

    /** Minutes count from when the first of them comes. */
    private static Crew.Member member(Attendance person, VisitContext hand) {
        ZonedDateTime begins = hand.visit().began();
        int from = minute(begins, person.arrived());
        return new Crew.Member(hand.rates().labor().grade(person.grade()).orElseThrow().qualified(), from,
                person.mustLeave().map(leaves -> Math.max(from, minute(begins, leaves))).orElse(Crew.TO_THE_END));
    }

    private static int minute(ZonedDateTime begins, ZonedDateTime moment) {
        return Math.toIntExact(Duration.between(begins, moment).toMinutes());
    }

    public Validated<Timetable> timetable() {
        return timetable(Effort.USUAL);
    }

    Validated<Timetable> timetable(Effort effort) {
        return crew().then(crew -> VisitWorkAssembly.of(hand).work()
                .then(work -> progress.map(known -> Planner.again(work, crew, effort, known))
                        .orElseGet(() -> hand.timetables().timetable(work, crew, effort))));
    }

    /** Some machines of the visit, by the same crew at the same hours some days later. */
    TimetableRequest part(int days, List<String> machines) {
        return new TimetableRequest(hand.part(days, machines), people, members, Optional.empty());
    }

    /** The same from where the visit has come to; as it was where nothing is ticked. */
    public Validated<TimetableRequest> from(TickedTimes ticked) {
        return ticked.areNone()
                ? Validated.valid(this)
                : timetable().then(planned -> new Ticks(ticked, hand, planned).progress())
                        .map(known -> new TimetableRequest(hand, people, members, Optional.of(known)));
    }

    private Validated<Crew> crew() {
        Problems problems = new Problems();
        if (people.isEmpty() || people.size() > Crew.MOST) {
            problems.add(Code.OUT_OF_RANGE, hand.visit().place(), people.size() + " people come",
                    "from 1 to " + Crew.MOST + " for a timetable");
        }
        return problems.or(() -> new Crew(members, VisitWorkAssembly.rest(hand.rates().labor())));
    }
}
