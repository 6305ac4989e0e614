package icequill.planner;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.planner.kept.KeptTimetables;
import icequill.planner.kept.Shelf;
import icequill.problem.Place;
import icequill.problem.Validated;
import icequill.work.DustLevel;
import icequill.work.MachineState;
import icequill.work.Procedure;
import icequill.work.Qualification;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;

/** A timetable that is kept is the one that was found, and is given for nothing but what it was found for. */
class KeptTimetablesTest {

    private static final List<String> TWO = List.of("a", "b");
    private static final Effort LITTLE = new Effort(200, 8);
    private static final MachineTask TASK = new MachineTask("a", "wash", MachineState.CIRCULATING, 10, 1, Set.of(), 5,
            5,
            Optional.of(Visits.TIMER), false, DustLevel.NEITHER, false, Place.NOWHERE);
    private static final Crew.Member MEMBER = new Crew.Member(Set.of(), 0, Crew.TO_THE_END);

    /**
     * In memory.
     *
     * @param asked whatever was asked for, in turn
     */
    private record Noted(Map<String, String> texts, List<String> asked) implements Shelf {

        private Noted() {
            this(new HashMap<>(), new ArrayList<>());
        }

        @Override
        public Optional<String> text(String wanted) {
            asked.add(wanted);
            return Optional.ofNullable(texts.get(wanted));
        }

        @Override
        public void put(String wanted, String text) {
            assertThat(texts.put(wanted, text)).as("looked for a second time").isNull();
        }
    }

    /** What a timetable is kept under, whether or not there is one. */
    private static String asked(VisitWork work, Crew crew, Effort effort) {
        Noted shelf = new Noted();
        Validated<Timetable> found = new KeptTimetables(shelf).timetable(work, crew, effort);
        assertThat(shelf.texts()).hasSize(found.found().isPresent() ? 1 : 0);
        return shelf.asked().getFirst();
    }

    private static VisitWork work(MachineTask first) {
        return Visits.work(2, TWO,
                List.of(first, Visits.flush("a", 20, 5), Visits.task("b", "job", MachineState.ANY, 1, 3, 0)));
    }

    private static Crew crew(Crew.Member... members) {
        return new Crew(List.of(members), Optional.empty());
    }

    private static Crew pair() {
        return crew(MEMBER, MEMBER);
    }

    private static Map<String, MachineTask> tasks() {
        Map<String, MachineTask> changed = new LinkedHashMap<>();
        MachineTask t = TASK;
        changed.put("machine", new MachineTask("b", t.name(), t.state(), t.order(), 1, t.needs(), 5, 5,
                Optional.empty(), false, t.dust(), false, t.place()));
        changed.put("name", new MachineTask("a", "rinse", t.state(), t.order(), 1, t.needs(), 5, 5, t.timer(), false,
                t.dust(), false, t.place()));
        changed.put("state", new MachineTask("a", t.name(), MachineState.MAKING_ICE, t.order(), 1, t.needs(), 5, 5,
                t.timer(), false, t.dust(), false, t.place()));
        changed.put("order", new MachineTask("a", t.name(), t.state(), 11, 1, t.needs(), 5, 5, t.timer(), false,
                t.dust(), false, t.place()));
        changed.put("people", Visits.with(t, 2, t.dust()));
        changed.put("needs", Visits.needing(t, Set.of(Qualification.ACID)));
        changed.put("attended", new MachineTask("a", t.name(), t.state(), t.order(), 1, t.needs(), 6, 5, t.timer(),
                false, t.dust(), false, t.place()));
        changed.put("unattended", new MachineTask("a", t.name(), t.state(), t.order(), 1, t.needs(), 5, 6, t.timer(),
                false, t.dust(), false, t.place()));
        changed.put("timer", new MachineTask("a", t.name(), t.state(), t.order(), 1, t.needs(), 5, 5,
                Optional.of(new Procedure.Timer(20, 26)), false, t.dust(), false, t.place()));
        changed.put("flushes", new MachineTask("a", t.name(), t.state(), t.order(), 1, t.needs(), 5, 5, t.timer(),
                true, t.dust(), false, t.place()));
        changed.put("dust", Visits.with(t, 1, DustLevel.RAISES));
        changed.put("accompanied", Visits.accompanied(t));
        return changed;
    }

    private static List<String> components(Class<? extends Record> type) {
        return Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName).toList();
    }

    /** Each part that a timetable depends on is changed by itself; a part that is new in one of the records fails the first lines. */
    @Test
    void asked_anyPartChanged_isAnother() {
        Map<String, MachineTask> tasks = tasks();
        assertThat(components(MachineTask.class)).filteredOn(part -> !part.equals("place"))
                .containsExactlyElementsOf(tasks.keySet());
        assertThat(components(VisitWork.class)).containsExactly("walks", "neverBothOff", "neverAllOff", "tasks");
        assertThat(components(Crew.class)).containsExactly("members", "rest");
        assertThat(components(Crew.Member.class)).containsExactly("qualified", "from", "until");
        assertThat(components(Crew.Rest.class)).containsExactly("after", "minutes");
        assertThat(components(Effort.class)).containsExactly("nodes", "width");

        Set<Qualification> acid = Set.of(Qualification.ACID);
        Crew able = crew(new Crew.Member(acid), new Crew.Member(acid));
        VisitWork work = work(TASK);
        List<VisitWork.Pair> apart = List.of(new VisitWork.Pair("a", "b"));
        Stream<String> all = Stream.of(
                Stream.of(asked(work, pair(), LITTLE), asked(work, able, LITTLE)),
                tasks.values().stream().map(task -> asked(work(task), able, LITTLE)),
                Stream.of(new VisitWork(WalkTimes.of(TWO, 3, List.of()), List.of(), List.of(), work.tasks()),
                        new VisitWork(WalkTimes.of(List.of("b", "a"), 2, List.of()), List.of(), List.of(),
                                work.tasks()),
                        new VisitWork(work.walks(), apart, List.of(), work.tasks()),
                        new VisitWork(work.walks(), List.of(), List.of(Set.copyOf(TWO)), work.tasks()),
                        new VisitWork(work.walks(), List.of(), List.of(), work.tasks().subList(0, 2)))
                        .map(other -> asked(other, pair(), LITTLE)),
                Stream.of(crew(MEMBER), crew(MEMBER, new Crew.Member(acid)),
                        crew(MEMBER, new Crew.Member(Set.of(), 1, Crew.TO_THE_END)),
                        crew(MEMBER, new Crew.Member(Set.of(), 0, 200)),
                        new Crew(pair().members(), Optional.of(new Crew.Rest(120, 30))),
                        new Crew(pair().members(), Optional.of(new Crew.Rest(121, 30))),
                        new Crew(pair().members(), Optional.of(new Crew.Rest(120, 31))))
                        .map(other -> asked(work, other, LITTLE)),
                Stream.of(new Effort(201, 8), new Effort(200, 9)).map(other -> asked(work, pair(), other)))
                .flatMap(some -> some);

        assertThat(all).doesNotHaveDuplicates();
    }

    /** Names that run into each other are told apart. */
    @Test
    void asked_namesThatRunTogether_areAnother() {
        assertThat(asked(Visits.work(0, TWO, List.of(Visits.task("a", "1:b", MachineState.ANY, 1, 3, 0))), pair(),
                LITTLE)).isNotEqualTo(
                        asked(Visits.work(0, TWO, List.of(Visits.task("a", "1", MachineState.ANY, 1, 3, 0))), pair(),
                                LITTLE));
    }

    /** Where it stands in a file, a task takes the same time. */
    @Test
    void asked_taskOfAnotherLine_isTheSame() {
        MachineTask moved = new MachineTask("a", TASK.name(), TASK.state(), TASK.order(), 1, TASK.needs(), 5, 5,
                TASK.timer(), false, TASK.dust(), false, new Place("tasks.yaml", 12, "tasks[1]"));

        assertThat(asked(work(moved), pair(), LITTLE)).isEqualTo(asked(work(TASK), pair(), LITTLE));
    }

    /** The same work at another site is not searched for again. */
    @Test
    void asked_sameWorkAtAnotherSite_isTheSame() {
        List<String> other = List.of("cuber-7", "flaker-9");
        Noted shelf = new Noted();
        VisitWork here = jobs(TWO);
        VisitWork there = jobs(other);
        new KeptTimetables(shelf).timetable(here, pair(), LITTLE).orElseThrow();

        Timetable found = new KeptTimetables(shelf).timetable(there, pair(), LITTLE).orElseThrow();

        assertThat(shelf.texts()).hasSize(1);
        assertThat(found).isEqualTo(Planner.timetable(there, pair(), LITTLE).orElseThrow());
        assertThat(found.entries()).extracting(Timetable.Entry::machine).containsAll(other);
        assertThat(asked(jobs(List.of("flaker-9", "cuber-7")), pair(), LITTLE))
                .isNotEqualTo(asked(there, pair(), LITTLE));
    }

    private static VisitWork jobs(List<String> machines) {
        return Visits.work(2, machines, List.of(Visits.task(machines.getFirst(), "job", MachineState.ANY, 1, 30, 0),
                Visits.task(machines.getLast(), "job", MachineState.ANY, 1, 60, 0)));
    }

    private static Stream<Map.Entry<VisitWork, Crew>> visits() {
        VisitWork cleanings = Visits.cleanings(3, 2);
        VisitWork jobs = Visits.work(0, TWO, List.of(Visits.task("a", "job", MachineState.ANY, 1, 60, 0),
                Visits.task("b", "job", MachineState.ANY, 1, 60, 0),
                Visits.task("b", "rest", MachineState.ANY, 2, 60, 0)));
        return Stream.of(Map.entry(cleanings, new Crew(1)), Map.entry(cleanings, new Crew(2)),
                Map.entry(Visits.neverBothOff(cleanings, "m0", "m1"), new Crew(2)),
                Map.entry(jobs, new Crew(List.of(MEMBER), Optional.of(new Crew.Rest(120, 30)))),
                Map.entry(jobs, crew(new Crew.Member(Set.of(), 0, 45), new Crew.Member(Set.of(), 10, 100))));
    }

    /** Waits, breaks and people who stay too long among them. */
    @Test
    void timetable_askedAgain_isTheOneThatWasFound() {
        visits().forEach(visit -> {
            KeptTimetables kept = new KeptTimetables(new Noted());
            Timetable found = Planner.timetable(visit.getKey(), visit.getValue(), LITTLE).orElseThrow();

            assertThat(kept.timetable(visit.getKey(), visit.getValue(), LITTLE).orElseThrow()).isEqualTo(found);
            assertThat(kept.timetable(visit.getKey(), visit.getValue(), LITTLE).orElseThrow()).isEqualTo(found);
        });
    }

    /**
     * What the planner finds for some visits, as one number. Where it differs, shops have timetables on their disks that would not be
     * found any more: then {@code AskedWork.SEARCH} has to be one higher, and this number with it.
     */
    @Test
    void search_findsOthersThanBefore_hasAnotherNumber() {
        CRC32 sum = new CRC32();
        visits().forEach(visit -> {
            Noted shelf = new Noted();
            new KeptTimetables(shelf).timetable(visit.getKey(), visit.getValue(), LITTLE).orElseThrow();
            shelf.texts().forEach((asked, text) -> sum
                    .update((asked.substring(0, 3) + text).getBytes(StandardCharsets.UTF_8)));
        });

        assertThat(sum.getValue()).isEqualTo(2_615_806_644L);
    }
}
