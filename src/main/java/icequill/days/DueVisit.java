package icequill.days;

import icequill.agreement.Scope;
import icequill.party.Site;
import icequill.plans.AgreementAtSite;
import icequill.plans.CalendarVisit;
import icequill.pricer.StaffedVisit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A visit that is due by an agreement.
 *
 * @param agreement by number
 * @param last the last day on which a visit still is this one: nearer to its day than to the next one's, while the agreement is in force
 * @param standing on the day that was asked about
 */
public record DueVisit(String agreement, Site site, CalendarVisit work, LocalDate last, Standing standing) {

    /** Days of the calendar after the one that was asked about, since a visit may be nearer to one of them. */
    private static final int YEARS_AHEAD = 1;

    /**
     * Those of an agreement at one of its sites that are due up to a day, by rising day.
     *
     * @param attended at the site; what somebody called for is none of the calendar's
     */
    public static List<DueVisit> of(AgreementAtSite state, List<Attended> attended, LocalDate today, LocalDate until) {
        LocalDate ahead = until.plusYears(YEARS_AHEAD);
        List<CalendarVisit> calendar = state.visitsUntil(ahead);
        LocalDate whole = state.request().termUntil(ahead).lastDay();
        LocalDate ends = state.request().lastDayHere().filter(whole::isAfter).orElse(whole);
        LocalDate first = state.request().firstVisitDay();
        Set<String> full = FullCleaning.tasks(state.setting().rates().plans().scopes());
        List<Attended> since = attended.stream()
                .filter(visit -> !visit.isAsked() && !visit.day().isBefore(first) && !visit.day().isAfter(ends))
                .toList();
        List<Standing> standings = Standing.of(calendar.stream().map(due -> due.visit().date()).toList(),
                (due, visit) -> visit.does(tasks(calendar.get(due), full), calendar.get(due).machines()), since, today);
        return IntStream.range(0, calendar.size()).filter(i -> !calendar.get(i).visit().date().isAfter(until))
                .mapToObj(i -> new DueVisit(state.request().number(), state.setting().whole(), calendar.get(i),
                        last(calendar, i, ends), standings.get(i)))
                .toList();
    }

    private static LocalDate last(List<CalendarVisit> calendar, int place, LocalDate ends) {
        LocalDate due = calendar.get(place).visit().date();
        LocalDate last = place + 1 < calendar.size()
                ? due.plusDays(ChronoUnit.DAYS.between(due, calendar.get(place + 1).visit().date()) / 2)
                : ends;
        return last.isAfter(ends) ? ends : last;
    }

    /** By which a visit is known as this one. */
    private static Set<String> tasks(CalendarVisit due, Set<String> full) {
        Scope scope = due.visit().slot().scope();
        return scope.tasks().stream().filter(task -> !scope.isFullClean() || full.contains(task))
                .collect(Collectors.toSet());
    }

    /** By which it is told from all others. */
    public String key() {
        return agreement + " " + site.id() + " " + day();
    }

    /** Whether it is to be seen to: not answered yet, and the next one not due. */
    public boolean isOpen() {
        return standing.state() == Standing.State.DUE || standing.state() == Standing.State.LATE;
    }

    public LocalDate day() {
        return work.visit().date();
    }

    /** How many come; one where that was never planned. */
    public int people() {
        return Math.max(1, work.crew().size());
    }

    /** Minutes that each of the crew stays, in its order. */
    public List<Integer> stays() {
        return work.crew().stream().map(StaffedVisit.Person::minutes).toList();
    }

    /** Minutes at the site, until the last of the crew leaves; empty where that was never planned. */
    public Optional<Integer> minutes() {
        return stays().stream().max(Integer::compare);
    }
}
