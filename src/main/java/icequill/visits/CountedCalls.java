package icequill.visits;

import icequill.request.AgreementRequest;
import icequill.work.Finding;
import icequill.work.Visit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * The calls that an agreement includes in a year of its term, and which visits used them.
 *
 * @param included in a year, at least 1
 * @param from the first day of the year
 * @param until its last
 * @param used that answered a call and called work of theirs included, in the order in which they began
 */
public record CountedCalls(int included, LocalDate from, LocalDate until, List<Visit> used) {

    public CountedCalls {
        used = List.copyOf(used);
    }

    /**
     * Those of the year that a day is in.
     *
     * @param included in a year
     * @param machines that the agreement is for
     * @param answered visits at its site that answered a call, and are neither withdrawn nor given back
     */
    public static CountedCalls on(LocalDate day, AgreementRequest request, int included, Set<String> machines,
            List<Visit> answered) {
        LocalDate start = request.scope().term().start();
        LocalDate from = start.plusYears(Math.max(0, ChronoUnit.YEARS.between(start, day)));
        LocalDate next = from.plusYears(1);
        return new CountedCalls(included, from, next.minusDays(1),
                answered.stream().filter(visit -> !visit.day().isBefore(from) && visit.day().isBefore(next))
                        .filter(visit -> new IncludedWork(visit).isAny() && reaches(machines, visit))
                        .sorted(Comparator.comparing((Visit visit) -> visit.began().toInstant())
                                .thenComparing(Visit::id))
                        .toList());
    }

    private static boolean reaches(Set<String> machines, Visit visit) {
        return visit.findings().isEmpty()
                || visit.findings().stream().map(Finding::machine).anyMatch(machines::contains);
    }

    /** How many are left; never less than none. */
    public int left() {
        return Math.max(0, included - used.size());
    }

    /** The visits that used one, by id. */
    public List<String> visits() {
        return used.stream().map(Visit::id).toList();
    }

    /** Without one of the visits, as long as it is not known whether it may use a call. */
    CountedCalls without(Visit visit) {
        return new CountedCalls(included, from, until,
                used.stream().filter(other -> !other.id().equals(visit.id())).toList());
    }

    /** Which of the calls a visit is, from 1: those come before it that began before it. */
    int place(Visit visit) {
        return 1 + (int) without(visit).used().stream()
                .filter(other -> other.began().toInstant().isBefore(visit.began().toInstant())).count();
    }
}
