package icequill.planner.kept;

import icequill.planner.MachineTask;
import icequill.planner.Timetable;
import icequill.planner.Timetable.Entry;
import icequill.planner.Timetable.Kind;
import icequill.planner.Timetable.Overstay;
import icequill.planner.VisitWork;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A timetable as lines of whole numbers, without a name in them. The first has its minutes, bound, walking and crew; then comes a line for
 * each who stays too long, and one for each entry: its kind, the place of its task in the work, start, end, spare, and who.
 */
record TimetableText(VisitWork work) {

    private static final String STAYS = "STAYS";

    String of(Timetable table) {
        return Stream.of(Stream.of(line(table.minutes(), table.bound(), table.walking(), table.crew())),
                table.overstays().stream().map(stay -> STAYS + " " + line(stay.person(), stay.minutes())),
                table.entries().stream().map(this::line)).flatMap(lines -> lines).collect(Collectors.joining("\n"));
    }

    private String line(Entry entry) {
        return entry.kind() + " " + line(IntStream.concat(
                IntStream.of(place(entry), entry.start(), entry.end(), entry.spare()),
                entry.people().stream().mapToInt(person -> person)).toArray());
    }

    /** That of the entry's task, or of one that a break follows: tasks of one name and order at a machine are told alike. */
    private int place(Entry entry) {
        return IntStream.range(0, work.tasks().size())
                .filter(task -> Entry.of(entry.kind(), work.tasks().get(task), entry.people(), entry.start(),
                        entry.end(), entry.spare()).equals(entry))
                .findFirst().orElseThrow();
    }

    private static String line(int... numbers) {
        return Arrays.stream(numbers).mapToObj(Integer::toString).collect(Collectors.joining(" "));
    }

    /** What {@link #of} made of one for the same work. */
    Timetable read(String text) {
        List<Overstay> overstays = new ArrayList<>();
        List<Entry> entries = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (String line : lines.subList(1, lines.size())) {
            String[] parts = line.split(" ", 2);
            List<Integer> numbers = numbers(parts[1]);
            if (parts[0].equals(STAYS)) {
                overstays.add(new Overstay(numbers.getFirst(), numbers.getLast()));
            } else {
                entries.add(entry(Kind.valueOf(parts[0]), numbers));
            }
        }
        List<Integer> whole = numbers(lines.getFirst());
        return new Timetable(whole.get(0), whole.get(1), whole.get(2), whole.get(3), overstays, entries);
    }

    private Entry entry(Kind kind, List<Integer> numbers) {
        MachineTask task = work.tasks().get(numbers.getFirst());
        return Entry.of(kind, task, numbers.subList(4, numbers.size()), numbers.get(1), numbers.get(2), numbers.get(3));
    }

    private static List<Integer> numbers(String line) {
        return Arrays.stream(line.split(" ")).map(Integer::valueOf).toList();
    }
}
