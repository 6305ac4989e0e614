package icequill.days;

import icequill.party.AccessHours;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A due visit for which a day is looked for.
 *
 * @param minutes at the site
 * @param first the first day on which it may be made
 * @param last the last such day
 * @param person who came last; empty where nobody did
 */
public record Wanted(DueVisit due, Road road, int minutes, LocalDate first, LocalDate last,
        Optional<String> person) {

    /** Weights in minutes of driving that are worth as much (our own choice). */
    private static final int EARLY = 4;
    private static final int LATE = 12;
    private static final int OTHER = 15;
    private static final int HOUR = 60;
    private static final int DAY = 24 * HOUR;

    /** Days before it is due on which it may be made. */
    private static final int DAYS_BEFORE = 7;
    /** Days after it is due, or after the first day that is left for a late one. */
    private static final int DAYS_AFTER = 14;

    /** With the days around its own on which it may be made, none before a first one or on which it would be the next one. */
    public static Wanted of(DueVisit due, Road road, int minutes, LocalDate first, Optional<String> person) {
        LocalDate early = due.day().minusDays(DAYS_BEFORE);
        LocalDate begin = early.isBefore(first) ? first : early;
        LocalDate last = (due.day().isBefore(first) ? first : due.day()).plusDays(DAYS_AFTER);
        return new Wanted(due, road, minutes, begin, last.isAfter(due.last()) ? due.last() : last, person);
    }

    boolean isOn(LocalDate day) {
        return !day.isBefore(first) && !day.isAfter(last) && due.site().isOpen(day);
    }

    /** By their due days. */
    static List<Wanted> inOrder(List<Wanted> visits) {
        return visits.stream().sorted(Comparator.comparing((Wanted visit) -> visit.due().day())
                .thenComparing(visit -> visit.due().key())).toList();
    }

    /** What a day costs besides driving. */
    int cost(LocalDate day, Person who) {
        return cost(day, List.of(who));
    }

    /** The same for several people, one of whom may have come last; each of another grade than planned costs as much as a stranger. */
    int cost(LocalDate day, Team team) {
        return cost(day, team.people()) + team.others() * OTHER;
    }

    private int cost(LocalDate day, List<Person> who) {
        LocalDate best = due.day().isBefore(first) ? first : due.day();
        int days = (int) (day.toEpochDay() - best.toEpochDay());
        return (days < 0 ? -days * EARLY : days * LATE)
                + (person.filter(name -> who.stream().noneMatch(one -> one.name().equals(name))).isPresent()
                        ? OTHER
                        : 0);
    }

    /** The stay of somebody who is there for the whole visit. */
    Stop stop() {
        return stop(minutes, 0);
    }

    /**
     * The stay of one of its people.
     *
     * @param stay minutes he is there
     * @param earliest before which it does not begin, in minutes since midnight
     */
    Stop stop(int stay, int earliest) {
        Optional<AccessHours> access = due.site().access();
        int open = access.map(hours -> hours.from().getHour() * HOUR + hours.from().getMinute()).orElse(0);
        return new Stop(due.key(), road, Math.max(open, earliest),
                access.map(hours -> Math.min(DAY, open + hours.length())).orElse(DAY), stay, false,
                Optional.of(due.site().name()));
    }
}
