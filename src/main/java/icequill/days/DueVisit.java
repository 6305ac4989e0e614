package icequill.days;

import icequill.agreement.Scope;
import icequill.party.Site;
import icequill.plans.AgreementState;
import icequill.plans.CalendarVisit;
import icequill.pricer.StaffedVisit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A visit that is due by an agreement.
 *
 * @param agreement by number
 * @param standing on the day that was asked about
 */
public record DueVisit(String agreement, Site site, CalendarVisit work, Standing standing) {

    /** Days of the calendar after the one that was asked about, since a visit may be nearer to one of them. */
    private static final int YEARS_AHEAD = 1;

    /**
     * Those of an agreement at one of its sites that are due up to a day, by rising day.
     *
     * @param attended at the site; what somebody called for is none of the calendar's
     */
    public static List<DueVisit> of(AgreementState state, List<Attended> attended, LocalDate today, LocalDate until) {
        List<CalendarVisit> calendar = state.visitsUntil(until.plusYears(YEARS_AHEAD));
        LocalDate first = state.request().scope().term().start().minusMonths(1);
        Set<String> full = FullCleaning.tasks(state.setting().rates().plans().scopes());
        List<Attended> since = attended.stream()
                .filter(visit -> !visit.isAsked() && !visit.day().isBefore(first)).toList();
        List<Standing> standings = Standing.of(calendar.stream().map(due -> due.visit().date()).toList(),
                (due, visit) -> visit.does(tasks(calendar.get(due), full), calendar.get(due).machines()), since, today);
        return IntStream.range(0, calendar.size()).filter(i -> !calendar.get(i).visit().date().isAfter(until))
                .mapToObj(i -> new DueVisit(state.request().number(), state.setting().whole(), calendar.get(i),
                        standings.get(i)))
                .toList();
    }

    /** By which a visit is known as this one. */
    private static Set<String> tasks(CalendarVisit due, Set<String> full) {
        Scope scope = due.visit().slot().scope();
        return scope.tasks().stream().filter(task -> !scope.isFullClean() || full.contains(task))
                .collect(Collectors.toSet());
    }

    public LocalDate day() {
        return work.visit().date();
    }

    /** How many come; one where that was never planned. */
    public int people() {
        return Math.max(1, work.crew().size());
    }

    /** Minutes at the site, until the last of the crew leaves; empty where that was never planned. */
    public Optional<Integer> minutes() {
        return work.crew().stream().map(StaffedVisit.Person::minutes).max(Integer::compare);
    }
}
