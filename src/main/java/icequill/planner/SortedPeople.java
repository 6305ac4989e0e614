package icequill.planner;

import icequill.planner.Timetable.Entry;
import icequill.planner.Timetable.Overstay;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A crew by what tells its people apart, so that nothing depends on how they were listed: who comes first, stays longest and may be given
 * most before the others, and of those who are alike on a visit that runs by what each has done.
 *
 * @param given by their sorted numbers, the numbers under which they were listed
 */
record SortedPeople(Crew listed, Optional<Progress> progress, List<Integer> given) {

    static SortedPeople of(Crew crew, Optional<Progress> progress) {
        List<Integer> given = IntStream.range(0, crew.size()).boxed()
                .sorted(Comparator.<Integer>comparingInt(person -> crew.members().get(person).from())
                        .thenComparing(person -> crew.members().get(person).until(), Comparator.reverseOrder())
                        .thenComparing(person -> crew.members().get(person).qualified().size(),
                                Comparator.reverseOrder())
                        .thenComparing(person -> crew.members().get(person).qualified().stream().sorted().toList()
                                .toString())
                        .thenComparing(person -> history(person, progress)))
                .toList();
        return new SortedPeople(crew, progress, given);
    }

    private static String history(int person, Optional<Progress> progress) {
        return progress.stream().flatMap(known -> known.done().stream())
                .filter(done -> done.people().contains(person))
                .map(done -> done.machine() + " " + done.order() + " " + done.task() + " " + done.over()).sorted()
                .collect(Collectors.joining("\n"));
    }

    Crew crew() {
        return new Crew(given.stream().map(listed.members()::get).toList(), listed.rest());
    }

    /** How far the visit has come, by their sorted numbers. */
    Optional<Progress> done() {
        return progress.map(known -> new Progress(known.now(), known.done().stream()
                .map(done -> new Progress.Done(done.machine(), done.order(), done.task(), done.over(),
                        done.people().stream().map(given::indexOf).sorted().toList()))
                .toList()));
    }

    /** A timetable with the numbers under which they were listed. */
    Timetable asListed(Timetable table) {
        return new Timetable(table.minutes(), table.bound(), table.walking(), table.crew(),
                table.overstays().stream().map(each -> new Overstay(given.get(each.person()), each.minutes()))
                        .sorted(Comparator.comparingInt(Overstay::person)).toList(),
                table.entries().stream().map(this::asListed).toList());
    }

    private Entry asListed(Entry entry) {
        return new Entry(entry.machine(), entry.task(), entry.order(), entry.kind(), entry.state(),
                entry.people().stream().map(given::get).sorted().toList(), entry.start(), entry.end(), entry.spare());
    }
}
