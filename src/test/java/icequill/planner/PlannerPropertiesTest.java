package icequill.planner;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.problem.Validated;
import icequill.work.DustLevel;
import icequill.work.MachineState;
import icequill.work.Procedure;
import icequill.work.Qualification;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;

/** What holds of every visit, asked of generated ones. */
@Tag("wide")
class PlannerPropertiesTest {

    private static final Effort EFFORT = new Effort(60_000, 1 << 12);
    private static final int MOST_TRIED = 6;
    private static final int TRIES = 60;

    /** A visit and how many come. */
    record Case(VisitWork work, int crew) {

        Timetable plan(int size) {
            return Planner.timetable(work, people(size), EFFORT).orElseThrow();
        }

        Crew people() {
            return people(crew);
        }

        /** The second may be given live parts only, anybody else everything. */
        private static Crew people(int size) {
            return new Crew(IntStream.range(0, size).mapToObj(
                    person -> person == 1 ? Set.of(Qualification.ELECTRICAL) : Set.of(Qualification.values()))
                    .toList());
        }
    }

    @Property(seed = "20260714", shrinking = ShrinkingMode.OFF)
    void plan_keepsEveryRule(@ForAll("visits") Case visit) {
        TimetableRules.check(visit.work(), visit.people(), visit.plan(visit.crew()));
        TimetableRules.check(visit.work(), visit.people(),
                OneAfterAnother.of(visit.work(), visit.people()));
    }

    @Property(tries = TRIES, seed = "20260719", shrinking = ShrinkingMode.OFF)
    void plan_littleEffort_keepsEveryRule(@ForAll("visits") Case visit) {
        TimetableRules.check(visit.work(), visit.people(),
                Planner.timetable(visit.work(), visit.people(), new Effort(200, 8)).orElseThrow());
    }

    @Tag("long")
    @Property(tries = 500, seed = "20260719", shrinking = ShrinkingMode.OFF)
    void plan_littleEffort_keepsEveryRule_manyTries(@ForAll("visits") Case visit) {
        plan_littleEffort_keepsEveryRule(visit);
    }

    /** With breaks, people who come later or leave, work that nobody does alone, and three machines that are never all off. */
    @Property(tries = TRIES, seed = "20260720", shrinking = ShrinkingMode.OFF)
    void plan_crewThatComesRestsAndLeaves_keepsEveryRule(@ForAll("ruledVisits") Ruled visit) {
        Validated<Timetable> table = Planner.timetable(visit.work(), visit.crew(), new Effort(4_000, 16));

        table.found().ifPresent(found -> TimetableRules.check(visit.work(), visit.crew(), found));
        Statistics.label("found").collect(table.found().isPresent());
        Statistics.label("overstay").collect(table.found().filter(found -> !found.overstays().isEmpty()).isPresent());
        Statistics.label("found").coverage(found -> found.check(true).percentage(share -> share > 70));
    }

    @Tag("long")
    @Property(tries = 500, seed = "20260720", shrinking = ShrinkingMode.OFF)
    void plan_crewThatComesRestsAndLeaves_keepsEveryRule_manyTries(@ForAll("ruledVisits") Ruled visit) {
        plan_crewThatComesRestsAndLeaves_keepsEveryRule(visit);
    }

    /** Everything that was begun by some minute is ticked as planned: the rest begins then or later, and every rule is kept. */
    @Property(tries = TRIES, seed = "20260722", shrinking = ShrinkingMode.OFF)
    void again_tickedAsPlanned_keepsEveryRule(@ForAll("visits") Case visit, @ForAll @IntRange(max = 60) int now) {
        Effort little = new Effort(4_000, 16);
        Timetable planned = Planner.timetable(visit.work(), visit.people(), little).orElseThrow();

        Timetable again = Planner.again(visit.work(), visit.people(), little, new Progress(now, begun(planned, now, 0)))
                .orElseThrow();

        TimetableRules.check(visit.work(), visit.people(), again);
        assertThat(again.entries()).filteredOn(entry -> entry.kind() == Timetable.Kind.TASK)
                .allMatch(entry -> entry.start() >= now
                        || planned.entries().stream().anyMatch(before -> before.kind() == Timetable.Kind.TASK
                                && before.machine().equals(entry.machine()) && before.task().equals(entry.task())
                                && before.start() == entry.start() && before.people().equals(entry.people())));
    }

    @Tag("long")
    @Property(tries = 300, seed = "20260722", shrinking = ShrinkingMode.OFF)
    void again_tickedAsPlanned_keepsEveryRule_manyTries(@ForAll("visits") Case visit,
            @ForAll @IntRange(max = 60) int now) {
        again_tickedAsPlanned_keepsEveryRule(visit, now);
    }

    private static List<Progress.Done> begun(Timetable planned, int now, int late) {
        return planned.entries().stream()
                .filter(entry -> entry.kind() == Timetable.Kind.TASK && entry.start() < now)
                .map(entry -> new Progress.Done(entry.machine(), entry.order(), entry.task(), entry.end() + late,
                        entry.people()))
                .toList();
    }

    /** Whatever is late, and whoever should have left: what waits for its flush is flushed. */
    @Property(tries = TRIES, seed = "20260723", shrinking = ShrinkingMode.OFF)
    void again_lateWithACrewThatRestsAndLeaves_isAlwaysPlanned(@ForAll("ruledVisits") Ruled visit,
            @ForAll @IntRange(max = 60) int now, @ForAll @IntRange(max = 40) int late) {
        Effort little = new Effort(4_000, 16);
        Planner.timetable(visit.work(), visit.crew(), little).found().ifPresent(planned -> assertThat(Planner
                .again(visit.work(), visit.crew(), little, new Progress(now + late, begun(planned, now, late)))
                .found()).isPresent());
    }

    @Tag("long")
    @Property(tries = 300, seed = "20260723", shrinking = ShrinkingMode.OFF)
    void again_lateWithACrewThatRestsAndLeaves_isAlwaysPlanned_manyTries(@ForAll("ruledVisits") Ruled visit,
            @ForAll @IntRange(max = 60) int now, @ForAll @IntRange(max = 40) int late) {
        again_lateWithACrewThatRestsAndLeaves_isAlwaysPlanned(visit, now, late);
    }

    /** Whoever is called what, and listed where: the same is done at the same times, each task by somebody who is like whoever did it. */
    @Property(tries = TRIES, seed = "20260724", shrinking = ShrinkingMode.OFF)
    void plan_peopleInAnotherOrder_isTheSameUpToNames(@ForAll("ruledVisits") Ruled visit, @ForAll Random random,
            @ForAll @IntRange(max = 60) int now) {
        Effort little = new Effort(2_000, 16);
        List<Integer> order = new ArrayList<>(IntStream.range(0, visit.crew().size()).boxed().toList());
        Collections.shuffle(order, random);
        Crew turned = new Crew(order.stream().map(visit.crew().members()::get).toList(), visit.crew().rest());

        Optional<Timetable> one = Planner.timetable(visit.work(), visit.crew(), little).found();
        Optional<Timetable> other = Planner.timetable(visit.work(), turned, little).found();

        assertThat(other.map(table -> withoutNames(table, turned)))
                .isEqualTo(one.map(table -> withoutNames(table, visit.crew())));
        one.map(planned -> begun(planned, now, 0)).ifPresent(done -> assertThat(withoutNames(Planner.again(visit.work(),
                turned, little, new Progress(now, done.stream().map(each -> by(order, each)).toList())).orElseThrow(),
                turned)).isEqualTo(withoutNames(
                        Planner.again(visit.work(), visit.crew(), little,
                                new Progress(now, done)).orElseThrow(),
                        visit.crew())));
    }

    @Tag("long")
    @Property(tries = 200, seed = "20260724", shrinking = ShrinkingMode.OFF)
    void plan_peopleInAnotherOrder_isTheSameUpToNames_manyTries(@ForAll("ruledVisits") Ruled visit,
            @ForAll Random random,
            @ForAll @IntRange(max = 60) int now) {
        plan_peopleInAnotherOrder_isTheSameUpToNames(visit, random, now);
    }

    private static Progress.Done by(List<Integer> order, Progress.Done done) {
        return new Progress.Done(done.machine(), done.order(), done.task(), done.over(),
                done.people().stream().map(order::indexOf).toList());
    }

    /** What each person does, by what he is, and all else. */
    private static List<String> withoutNames(Timetable table, Crew crew) {
        return Stream.concat(Stream.of(table.minutes() + " " + table.bound() + " " + table.walking()),
                IntStream.range(0, crew.size()).mapToObj(person -> crew.members().get(person) + " "
                        + table.overstays().stream().filter(each -> each.person() == person)
                                .map(Timetable.Overstay::minutes).toList()
                        + table.entries().stream().filter(entry -> entry.people().contains(person))
                                .map(entry -> entry.machine() + " " + entry.task() + " " + entry.start()).toList())
                        .sorted())
                .toList();
    }

    /** With whatever a crew may ask for, what is proven is right, and no bound too high. */
    @Property(tries = TRIES, seed = "20260721", shrinking = ShrinkingMode.OFF)
    void plan_tinyRuledVisit_boundHoldsWhenEverythingIsTried(@ForAll("tinyRuledVisits") Ruled visit) {
        Validated<Timetable> table = Planner.timetable(visit.work(), visit.crew(), new Effort(4_000, 1 << 12));

        table.found().ifPresent(found -> assertThat(EveryStart.shortest(visit.work(), visit.crew()))
                .isBetween(found.bound(), found.minutes()));
        Statistics.label("proven").collect(table.found().filter(Timetable::proven).isPresent());
        Statistics.label("proven").coverage(found -> found.check(true).percentage(share -> share > 50));
    }

    @Tag("long")
    @Property(tries = 150, seed = "20260721", shrinking = ShrinkingMode.OFF)
    void plan_tinyRuledVisit_boundHoldsWhenEverythingIsTried_manyTries(@ForAll("tinyRuledVisits") Ruled visit) {
        plan_tinyRuledVisit_boundHoldsWhenEverythingIsTried(visit);
    }

    /** A visit with all that a crew may ask for. */
    record Ruled(VisitWork work, Crew crew) {}

    @Provide
    Arbitrary<Ruled> ruledVisits() {
        return Arbitraries.integers().between(0, 1_000_000).map(seed -> ruled(new Random(seed), 4, 7, 12));
    }

    @Provide
    Arbitrary<Ruled> tinyRuledVisits() {
        return Arbitraries.integers().between(0, 1_000_000).map(seed -> ruled(new Random(seed), 2, 2, 2))
                .filter(visit -> visit.work().tasks().size() < MOST_TRIED);
    }

    private static Ruled ruled(Random random, int machines, int most, int longest) {
        Case plain = visit(random, machines, most, longest);
        int size = Math.min(plain.crew() + random.nextInt(2), machines);
        List<Crew.Member> members = IntStream.range(0, size).mapToObj(person -> new Crew.Member(
                Case.people(size).members().get(person).qualified(),
                person > 0 && random.nextInt(3) == 0 ? random.nextInt(3 * longest) : 0,
                person > 0 && random.nextInt(3) == 0 ? 3 * longest + random.nextInt(9 * longest) : Crew.TO_THE_END))
                .toList();
        Optional<Crew.Rest> rest = random.nextInt(3) == 0
                ? Optional.empty()
                : Optional.of(new Crew.Rest(2 * longest + random.nextInt(5 * longest), 1 + random.nextInt(longest)));
        List<MachineTask> tasks = plain.work().tasks().stream()
                .map(task -> size > 1 && random.nextInt(8) == 0 ? Visits.accompanied(task) : task).toList();
        List<Set<String>> sets = plain.work().walks().machines().size() > 2 && random.nextBoolean()
                ? List.of(Set.of("m0", "m1", "m2"))
                : List.of();
        return new Ruled(new VisitWork(plain.work().walks(), plain.work().neverBothOff(), sets, tasks),
                new Crew(members, rest));
    }

    @Property(seed = "20260715", shrinking = ShrinkingMode.OFF)
    void plan_isBetweenItsBoundsAndOneAfterAnother(@ForAll("visits") Case visit) {
        Timetable table = visit.plan(visit.crew());
        int attended = visit.work().tasks().stream().mapToInt(task -> task.attended() * task.people()).sum();

        assertThat(table.minutes()).isLessThanOrEqualTo(
                OneAfterAnother.of(visit.work(), visit.people()).minutes());
        assertThat(table.minutes() * visit.crew()).isGreaterThanOrEqualTo(attended);
        for (MachineTask task : visit.work().tasks()) {
            assertThat(table.minutes()).isGreaterThanOrEqualTo(chainThrough(task, visit.work()));
        }
    }

    /** Every task of a lower order comes before, and its wait too where the machine's state is at stake. */
    private static int chainThrough(MachineTask last, VisitWork work) {
        return last.attended() + last.pause() + work.tasksAt(last.machine()).stream()
                .filter(task -> task.order() < last.order()).mapToInt(task -> chainThrough(task, work)
                        - (last.state() == MachineState.ANY ? task.pause() : 0))
                .max().orElse(0);
    }

    @Property(seed = "20260716", shrinking = ShrinkingMode.OFF)
    void plan_oneMoreTechnician_takesNoLonger(@ForAll("visits") Case visit) {
        Timetable fewer = visit.plan(visit.crew());
        Timetable more = visit.plan(visit.crew() + 1);

        assertThat(more.minutes()).isLessThanOrEqualTo(fewer.minutes());
        assertThat(more.bound()).isLessThanOrEqualTo(fewer.minutes());
    }

    @Property(seed = "20260717", shrinking = ShrinkingMode.OFF)
    void plan_smallVisit_isAsShortAsTheSolverFinds(@ForAll("smallVisits") Case visit) {
        Timetable table = visit.plan(visit.crew());

        assertThat(table.proven()).isTrue();
        assertThat(new ConstraintModel(visit.work(), visit.people(), table.minutes() + 5).shortest())
                .isEqualTo(table.minutes());
    }

    @Property(seed = "20260718", shrinking = ShrinkingMode.OFF)
    void plan_tiniestVisit_isAsShortAsTryingEverything(@ForAll("tiniestVisits") Case visit) {
        assertShortest(visit);
    }

    /** One of seven or eight tasks takes seconds. */
    @Tag("long")
    @Property(seed = "20260718", shrinking = ShrinkingMode.OFF)
    void plan_tinyVisit_isAsShortAsTryingEverything(@ForAll("tinyVisits") Case visit) {
        assertShortest(visit);
    }

    private static void assertShortest(Case visit) {
        Timetable table = visit.plan(visit.crew());

        assertThat(table.proven()).isTrue();
        assertThat(EveryStart.shortest(visit.work(), visit.people())).isEqualTo(table.minutes());
    }

    @Provide
    Arbitrary<Case> visits() {
        return Arbitraries.integers().between(0, 1_000_000).map(seed -> visit(new Random(seed), 4, 7, 12));
    }

    @Provide
    Arbitrary<Case> smallVisits() {
        return Arbitraries.integers().between(0, 1_000_000).map(seed -> visit(new Random(seed), 2, 4, 6));
    }

    @Provide
    Arbitrary<Case> tinyVisits() {
        return Arbitraries.integers().between(0, 1_000_000).map(seed -> visit(new Random(seed), 2, 2, 2));
    }

    @Provide
    Arbitrary<Case> tiniestVisits() {
        return tinyVisits().filter(visit -> visit.work().tasks().size() <= MOST_TRIED);
    }

    /** Machines with some of the usual tasks each, in all the ways that a timetable can feel. */
    private static Case visit(Random random, int machines, int tasks, int longest) {
        int crew = 1 + random.nextInt(2);
        List<String> names = Visits.names(1 + random.nextInt(machines));
        List<MachineTask> all = new ArrayList<>();
        for (String name : names) {
            all.addAll(machine(name, random, crew, tasks, longest));
        }
        WalkTimes walks = WalkTimes.of(names, random.nextInt(3),
                List.of(new WalkTimes.Walk("m0", "m1", random.nextInt(4))));
        boolean pair = names.size() > 1 && random.nextInt(3) == 0;
        List<MachineTask> tasksWithNeeds = all.stream().map(task -> task.people() == 1 ? needy(task, random) : task)
                .toList();
        return new Case(
                new VisitWork(walks, pair ? List.of(new VisitWork.Pair("m0", "m1")) : List.of(), List.of(),
                        tasksWithNeeds),
                crew);
    }

    private static MachineTask needy(MachineTask task, Random random) {
        int which = random.nextInt(2 * Qualification.values().length);
        return which < Qualification.values().length
                ? Visits.needing(task, Set.of(List.of(Qualification.values()).get(which)))
                : task;
    }

    private static List<MachineTask> machine(String name, Random random, int crew, int most, int longest) {
        List<MachineTask> tasks = new ArrayList<>();
        int[] minutes = random.ints(8, 1, longest + 1).toArray();
        int least = 1 + random.nextInt(longest);
        int slack = random.nextInt(3);
        tasks.add(Visits.task(name, "read", MachineState.MAKING_ICE, 10, minutes[0], random.nextInt(longest)));
        tasks.add(Visits.with(Visits.task(name, "brush", MachineState.DE_ENERGIZED, 30, minutes[1], 0),
                1 + random.nextInt(crew), random.nextBoolean() ? DustLevel.RAISES : DustLevel.NEITHER));
        tasks.add(Visits.task(name, "wash", MachineState.DE_ENERGIZED, 30, minutes[2], 0));
        tasks.add(Visits.with(Visits.task(name, "sanitize", MachineState.CIRCULATING, 80, minutes[3], minutes[4]), 1,
                random.nextBoolean() ? DustLevel.SPOILED : DustLevel.NEITHER));
        tasks.add(Visits.task(name, "bin", MachineState.ANY, 90, minutes[5], 0));
        while (tasks.size() > Math.max(1, most - 3)) {
            tasks.remove(random.nextInt(tasks.size()));
        }
        if (most > 2 || random.nextBoolean()) {
            tasks.add(Visits.pour(name, 60, minutes[6], 0, new Procedure.Timer(least, minutes[6] + least + slack)));
            tasks.add(Visits.flush(name, 70, minutes[7]));
        }
        tasks.add(Visits.task(name, "restart", MachineState.MAKING_ICE, 100, 1, 0));
        return tasks;
    }
}
