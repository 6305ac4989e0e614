package icequill.agreement;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The visits of an agreement's term.
 *
 * @param visits in order of their days
 * @param leftOut visits that fall away because the site is closed
 */
public record VisitCalendar(List<PlannedVisit> visits, List<LeftOut> leftOut) {

    private static final int YEAR = 12;

    public VisitCalendar {
        visits = List.copyOf(visits);
        leftOut = List.copyOf(leftOut);
    }

    /** A visit that falls away. */
    public record LeftOut(LocalDate due, Slot slot, Phrase why) {}

    /** A visit on the day it is due, and the day it can take place. */
    private record Due(int begun, LocalDate day, LocalDate open, Slot slot) {
        boolean moves() {
            return !open.equals(day);
        }
    }

    /**
     * Days counted from the start of the term, never from each other, so that a 31st comes back after a shorter month; slots in
     * their order. What is due while the site is closed moves to the first day of the month in which it opens. Of several visits
     * in that month one remains, a full cleaning where one of them is; what opens only after the term is left out.
     *
     * @param season months in which the site is open; empty for all
     * @param filters empty where filters are not changed
     */
    public static VisitCalendar of(Term term, Tier tier, Set<Month> season, Optional<FilterRule> filters) {
        Map<YearMonth, List<Due>> byMonth = new LinkedHashMap<>();
        List<LeftOut> leftOut = new ArrayList<>();
        for (int k = 0; k * tier.months() < term.months(); k++) {
            LocalDate day = term.start().plusMonths((long) k * tier.months());
            Due due = new Due(k * tier.months(), day, open(day, season), tier.slots().get(k % tier.slots().size()));
            if (term.contains(due.open())) {
                byMonth.computeIfAbsent(YearMonth.from(due.open()), month -> new ArrayList<>()).add(due);
            } else {
                leftOut.add(new LeftOut(day, due.slot(), Phrase.of("reason.closed-to-the-end", new Fact.Day(day))));
            }
        }
        List<PlannedVisit> visits = new ArrayList<>();
        byMonth.values().forEach(month -> visits.add(merged(month, leftOut)));
        return new VisitCalendar(withFilters(visits, tier.months(), filters), leftOut);
    }

    /** The visits of the first year, by which a year is priced. */
    public List<PlannedVisit> firstYear() {
        return visits.stream().filter(visit -> visit.begun() < YEAR).toList();
    }

    /** The day itself, or the first of the next month in which the site is open. */
    private static LocalDate open(LocalDate day, Set<Month> season) {
        LocalDate open = day;
        while (!season.isEmpty() && !season.contains(open.getMonth())) {
            open = open.withDayOfMonth(1).plusMonths(1);
        }
        return open;
    }

    /** The one visit of a month: on a day that was due if there is one, with the fullest scope. */
    private static PlannedVisit merged(List<Due> month, List<LeftOut> leftOut) {
        Due kept = month.stream().filter(due -> !due.moves()).findFirst().orElse(month.getFirst());
        Slot slot = month.stream().map(Due::slot).filter(full -> full.scope().isFullClean()).findFirst()
                .orElse(kept.slot());
        month.stream().filter(due -> !due.equals(kept)).forEach(due -> leftOut.add(new LeftOut(due.day(), due.slot(),
                Phrase.of("reason.closed-then-visited", new Fact.Day(due.day()), new Fact.Day(kept.open())))));
        Optional<Phrase> moved = kept.moves()
                ? Optional.of(Phrase.of("reason.closed-moved", new Fact.Day(kept.day())))
                : Optional.empty();
        return new PlannedVisit(kept.begun(), kept.open(), slot, false, moved);
    }

    /** Nobody knows how old the filters are at first, so they are changed on the first visit. */
    private static List<PlannedVisit> withFilters(List<PlannedVisit> visits, int months,
            Optional<FilterRule> filters) {
        List<PlannedVisit> all = new ArrayList<>();
        Optional<Integer> changed = Optional.empty();
        for (int i = 0; i < visits.size(); i++) {
            PlannedVisit visit = visits.get(i);
            int next = i + 1 < visits.size() ? visits.get(i + 1).begun() - visit.begun() : months;
            int since = changed.map(last -> visit.begun() - last).orElse(YEAR);
            boolean due = filters.filter(rule -> rule.isDue(since, next)).isPresent();
            changed = due ? Optional.of(visit.begun()) : changed;
            all.add(new PlannedVisit(visit.begun(), visit.date(), visit.slot(), due, visit.moved()));
        }
        return all;
    }
}
