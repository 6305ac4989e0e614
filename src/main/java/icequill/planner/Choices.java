package icequill.planner;

import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Searches in each way to keep sets of machines from being all off, and then once more in the best of them. */
record Choices(VisitWork work, Crew crew, Effort effort, Optional<Progress> progress) {

    private static final Comparator<Found> SHORTEST = Comparator
            .comparingInt((Found found) -> found.table().overstayed())
            .thenComparingInt(found -> found.table().minutes()).thenComparingInt(found -> found.table().walking());

    private record Found(VisitWork work, Timetable table) {}

    Validated<Timetable> shortest() {
        Problems problems = new WorkCheck(work, crew).problems();
        return problems.or(work::sorted).then(this::among);
    }

    private Validated<Timetable> among(VisitWork sorted) {
        List<VisitWork> choices = sorted.choices().stream()
                .filter(choice -> new WorkCheck(choice, crew).problems().isEmpty()).toList();
        Effort share = new Effort(Math.max(1, effort.nodes() / choices.size()), effort.width());
        List<Found> found = choices.stream().flatMap(choice -> search(choice, share).stream()).toList();
        return found.stream().min(SHORTEST).map(best -> Validated.valid(choices.size() == 1
                ? best.table()
                : improved(best, found))).orElseGet(() -> Validated.invalid(none()));
    }

    private Optional<Found> search(VisitWork choice, Effort most) {
        return new Search(Network.of(choice), crew, most, progress).shortest().map(table -> new Found(choice, table));
    }

    /** What is proven of it holds only beside what is proven of the others. */
    private Timetable improved(Found best, List<Found> all) {
        Timetable table = Stream.concat(search(best.work(), effort).stream(), Stream.of(best)).min(SHORTEST)
                .orElseThrow().table();
        int others = all.stream().filter(found -> !found.work().equals(best.work()))
                .mapToInt(found -> found.table().bound()).min()
                .orElse(table.minutes());
        return new Timetable(table.minutes(), Math.min(table.bound(), others), table.walking(), table.crew(),
                table.overstays(), table.entries());
    }

    private Problem none() {
        return new Problem(Code.NOT_ALLOWED, work.tasks().getFirst().place(),
                "no timetable was found in which nobody works too long without a break, and nobody is alone where he must "
                        + "not be",
                "more people, or less work");
    }
}
