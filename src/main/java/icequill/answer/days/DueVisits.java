package icequill.answer.days;

import icequill.days.Standing;
import icequill.problem.Problem;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Visits that are due up to a day, those that are recorded taken off.
 *
 * @param day as of which
 * @param until the last day on which a visit is due
 * @param weeks with a visit, the late ones first
 * @param sites that no agreement is for, and whose next full cleaning is due
 * @param missed visits whose day is over, and after which the next one is due already
 * @param problems of agreements whose visits could not be worked out
 */
public record DueVisits(LocalDate day, LocalDate until, List<Week> weeks, List<Cleaning> sites, List<Visit> missed,
        List<Problem> problems) {

    /**
     * A week.
     *
     * @param monday its first day
     * @param visits by day
     * @param loads of each person, and of nobody in particular
     */
    public record Week(LocalDate monday, List<Visit> visits, List<Load> loads) {

        public Week {
            visits = List.copyOf(visits);
            loads = List.copyOf(loads);
        }
    }

    /**
     * What somebody has to do in a week.
     *
     * @param person empty for visits of which it is not known who makes them
     * @param minutes at the sites, as far as they were planned
     */
    public record Load(Optional<String> person, int visits, int minutes) {}

    /**
     * A visit of an agreement.
     *
     * @param agreement by number
     * @param site by id
     * @param what is done, in the language of the reader
     * @param machines by id
     * @param people how many come
     * @param minutes at the site; empty where that was never planned
     * @param person who comes, or came last
     * @param visit of the book that is planned for it, by id
     * @param planned the day of that
     * @param moved why it is not due on another day, in the language of the reader
     */
    public record Visit(String agreement, String site, String siteName, LocalDate due, String what,
            List<String> machines, int people, Optional<Integer> minutes, Optional<String> person,
            Standing.State state, Optional<String> visit, Optional<LocalDate> planned, Optional<String> moved) {

        public Visit {
            machines = List.copyOf(machines);
        }

        /** The day on which it is to be seen to: that for which it is planned, or else that on which it is due. */
        LocalDate day() {
            return planned.orElse(due);
        }
    }

    /**
     * The next full cleaning of a site without an agreement.
     *
     * @param site by id
     * @param months from one to the next, as recommended
     * @param last full cleaning on record; empty where there is none, and it is counted from the first visit
     * @param isLate whether its day is over
     * @param visit of the book that is planned for it, by id
     */
    public record Cleaning(String site, String siteName, LocalDate due, int months, Optional<LocalDate> last,
            boolean isLate, Optional<String> visit) {}

    public DueVisits {
        weeks = List.copyOf(weeks);
        sites = List.copyOf(sites);
        missed = List.copyOf(missed);
        problems = List.copyOf(problems);
    }

    /** By week and by person. */
    public static DueVisits of(LocalDate day, LocalDate until, List<Visit> visits, List<Cleaning> sites,
            List<Problem> problems) {
        Map<LocalDate, List<Visit>> weeks = visits.stream()
                .filter(visit -> visit.state() != Standing.State.MISSED && visit.state() != Standing.State.DONE)
                .sorted(order(Visit::day)).collect(Collectors.groupingBy(visit -> monday(visit.day()), TreeMap::new,
                        Collectors.toList()));
        return new DueVisits(day, until,
                weeks.entrySet().stream().map(week -> new Week(week.getKey(), week.getValue(), loads(week.getValue())))
                        .toList(),
                sites.stream().sorted(Comparator.comparing(Cleaning::due).thenComparing(Cleaning::site)).toList(),
                visits.stream().filter(visit -> visit.state() == Standing.State.MISSED).sorted(order(Visit::due))
                        .toList(),
                problems);
    }

    private static Comparator<Visit> order(Function<Visit, LocalDate> day) {
        return Comparator.comparing(day).thenComparing(Visit::siteName).thenComparing(Visit::site)
                .thenComparing(Visit::agreement);
    }

    private static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    /** By name, those of nobody in particular last. */
    private static List<Load> loads(List<Visit> visits) {
        Map<Optional<String>, List<Visit>> byPerson = visits.stream()
                .collect(Collectors.groupingBy(Visit::person, LinkedHashMap::new, Collectors.toList()));
        return byPerson.entrySet().stream()
                .map(load -> new Load(load.getKey(), load.getValue().size(),
                        load.getValue().stream().mapToInt(visit -> visit.minutes().orElse(0)).sum()))
                .sorted(Comparator.comparing((Load load) -> load.person().isEmpty())
                        .thenComparing(load -> load.person().orElse("")))
                .toList();
    }
}
