package icequill.planner;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Plans whole cleanings for so many machines and people, and prints what comes out as a table: one after another, by beams of partial schedules
 * alone, at the usual effort, and at many times that. Arguments: how many times, then cases such as {@code 6/3/2}, machines, people
 * and pairs that are never both off; with a further {@code /break} where everybody has one of 30 minutes after 300 at the latest.
 */
public final class TimetableRuns {

    private static final int WALK = 2;
    private static final Crew.Rest BREAK = new Crew.Rest(300, 30);
    /** BeamSearch of more tasks take minutes. */
    private static final int LAYERED = 150;
    private static final int PLACINGS = 45_000_000;

    private final VisitWork work;
    private final Crew crew;
    private final Network network;

    private TimetableRuns(int machines, int people, int pairs, Optional<Crew.Rest> rest) {
        VisitWork plain = Visits.cleanings(machines, WALK);
        List<VisitWork.Pair> apart = new ArrayList<>();
        for (int pair = 0; pair < pairs; pair++) {
            apart.add(new VisitWork.Pair("m" + 2 * pair, "m" + (2 * pair + 1)));
        }
        work = new VisitWork(plain.walks(), apart, List.of(), plain.tasks()).sorted();
        crew = new Crew(new Crew(people).members(), rest);
        network = Network.of(work);
    }

    public static void main(String... arguments) {
        PrintStream out = System.out;
        int times = Integer.parseInt(arguments[0]);
        out.println(
                "| machines / people / pairs | one after another | beam alone | found | bound | gap | long run | CPU |");
        out.println("|---|---|---|---|---|---|---|---|");
        for (String each : List.of(arguments).subList(1, arguments.length)) {
            List<String> numbers = List.of(each.split("/", -1));
            int pairs = numbers.size() > 2 ? Integer.parseInt(numbers.get(2)) : 0;
            out.println(new TimetableRuns(Integer.parseInt(numbers.get(0)), Integer.parseInt(numbers.get(1)), pairs,
                    numbers.size() > 3 ? Optional.of(BREAK) : Optional.empty())
                    .row(each, times));
        }
    }

    private String row(String name, int times) {
        long began = cpu();
        Timetable table = Planner.timetable(work, crew, Effort.USUAL).orElseThrow();
        long ended = cpu();
        TimetableRules.check(work, crew, table);
        String gap = table.proven() ? "proven" : "%.1f %%".formatted(100.0 * table.gap() / table.bound());
        boolean small = network.size() <= LAYERED;
        String beam = small ? String.valueOf(best()) : "";
        String after = small
                ? String.valueOf(OneAfterAnother.of(work, crew).minutes())
                : "";
        Sequence longRun = times == 0 || table.proven()
                ? null
                : new LocalSearch(network, crew,
                        new ListScheduler(network, crew, false, new Started(network, Optional.empty())))
                        .shortest(table.bound(), times * Effort.USUAL.nodes());
        return "| %s | %s | %s | %d | %d | %s | %s | %.1f s |".formatted(name, after, beam, table.minutes(),
                table.bound(), gap, longRun == null ? "" : Integer.toString(longRun.end()), (ended - began) / 1e9);
    }

    /** By ever wider beams, as long as the effort lasts. */
    private int best() {
        Sequence best = new BeamSearch(new StateLayout(network, crew), Objective.ONE_BY_ONE, 32, Integer.MAX_VALUE,
                Integer.MAX_VALUE, Integer.MAX_VALUE).best().orElseThrow().sequence();
        int left = Math.min(Effort.USUAL.nodes(), PLACINGS / network.size());
        int bound = new LowerBounds(network, crew).least();
        for (int width = 32; width <= Effort.USUAL.width() && left > 0 && bound < best.end(); width *= 8) {
            BeamSearch beam = new BeamSearch(new StateLayout(network, crew), Objective.END, width, left, best.end(),
                    Integer.MAX_VALUE);
            best = beam.best().map(PartialSchedule::sequence).orElse(best);
            bound = Math.max(bound, Math.min(best.end(), beam.lost()));
            left -= beam.nodes();
        }
        return best.end();
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
