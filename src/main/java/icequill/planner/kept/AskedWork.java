package icequill.planner.kept;

import icequill.planner.Crew;
import icequill.planner.Effort;
import icequill.planner.MachineTask;
import icequill.planner.VisitWork;
import icequill.planner.WalkTimes;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All that a timetable depends on, as a text: equal where the timetable is equal for certain. Where a task stands in a file is left out,
 * since only reports of problems say it.
 */
final class AskedWork {

    /** One higher whenever the planner finds another timetable for the same work than it did. */
    private static final int SEARCH = 1;

    private AskedWork() {
    }

    static String text(VisitWork work, Crew crew, Effort effort) {
        return list(Stream.of(number(SEARCH), walks(work.walks()),
                list(work.neverBothOff().stream().map(pair -> list(Stream.of(pair.one(), pair.other())))),
                list(work.neverAllOff().stream().map(AskedWork::sorted)),
                list(work.tasks().stream().map(AskedWork::task)),
                list(crew.members().stream().map(AskedWork::member)),
                list(crew.rest().stream().flatMap(rest -> Stream.of(number(rest.after()), number(rest.minutes())))),
                number(effort.nodes()), number(effort.width())));
    }

    private static String walks(WalkTimes walks) {
        List<String> machines = walks.machines();
        return list(machines.stream().map(from -> list(Stream.concat(Stream.of(from),
                machines.stream().map(to -> number(walks.walk(from, to)))))));
    }

    private static String task(MachineTask task) {
        return list(Stream.of(task.machine(), task.name(), task.state().name(), number(task.order()),
                number(task.people()), sorted(task.needs()), number(task.attended()), number(task.unattended()),
                list(task.timer().stream().flatMap(timer -> Stream.of(number(timer.least()), number(timer.most())))),
                String.valueOf(task.flushes()), task.dust().name(), String.valueOf(task.accompanied())));
    }

    private static String member(Crew.Member member) {
        return list(Stream.of(sorted(member.qualified()), number(member.from()), number(member.until())));
    }

    private static String sorted(Collection<?> words) {
        return list(words.stream().map(String::valueOf).sorted());
    }

    private static String number(int value) {
        return Integer.toString(value);
    }

    /** Each part after its length, so that no two lists of parts have one text. */
    private static String list(Stream<String> parts) {
        return parts.map(part -> part.length() + ":" + part).collect(Collectors.joining());
    }
}
