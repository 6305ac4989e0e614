package icequill.pricer;

import icequill.agreement.FilterRule;
import icequill.agreement.PlannedVisit;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.AccessHours;
import icequill.party.Site;
import icequill.problem.Place;
import icequill.rates.Rates;
import icequill.work.Attendance;
import icequill.work.BandWeek;
import icequill.work.BandWeek.Window;
import icequill.work.ChargeClass;
import icequill.work.Finding;
import icequill.work.Order;
import icequill.work.Outcome;
import icequill.work.Task;
import icequill.work.Unit;
import icequill.work.Visit;
import icequill.work.VisitLine;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Makes a planned visit into the visit it will be, so that it is priced by the same rules as any other.
 *
 * @param zone of the shop
 */
record SlotVisit(Site site, Rates rates, ZoneId zone) {

    Visit of(VisitPlan plan) {
        return of(plan, List.of());
    }

    /** The same with more work than the visit's scope. */
    Visit of(VisitPlan plan, List<ExtraWork> extra) {
        PlannedVisit planned = plan.visit();
        Place place = planned.slot().scope().place();
        ZonedDateTime arrival = arrival(planned.date());
        List<Attendance> people = plan.crew().stream()
                .map(person -> new Attendance("", person.grade(), List.of(new Attendance.Spell(arrival,
                        arrival.plusMinutes(person.minutes()), ChargeClass.CLEANING, Outcome.CHARGED)), place))
                .toList();
        List<VisitLine> lines = new ArrayList<>(plan.modifiers());
        if (planned.filtersDue()) {
            rates.plans().filters().ifPresent(rule -> lines.addAll(filters(rule)));
        }
        return new Visit("", site.id(), Optional.empty(), Order.NONE, Outcome.CHARGED, people,
                findings(planned, extra, place),
                lines, List.of(), Optional.empty(), Optional.empty(), Optional.empty(),
                Visit.Handover.NONE, place);
    }

    /** That the work takes longer than the site lets us in, where it does. */
    List<Phrase> remarks(VisitPlan plan) {
        int longest = plan.crew().stream().mapToInt(VisitPlan.Person::minutes).max().orElse(0);
        return site.access().filter(hours -> minutes(hours) < longest)
                .map(hours -> Phrase.of("remark.access-too-short", Fact.number(longest, Unit.MINUTE.symbol()),
                        new Fact.Time(hours.from()), new Fact.Time(hours.until())))
                .stream().toList();
    }

    /** From the first to the last minute of access; midnight ends the day. */
    private static long minutes(AccessHours hours) {
        long minutes = Duration.between(hours.from(), hours.until()).toMinutes();
        return minutes > 0 ? minutes : minutes + Duration.ofDays(1).toMinutes();
    }

    private List<VisitLine> filters(FilterRule rule) {
        return site.machines().stream().<VisitLine>map(machine -> new VisitLine.MaterialUsed(rule.material(),
                BigDecimal.ONE, Optional.of(machine.id()), Outcome.CHARGED, rule.place())).toList();
    }

    /** Each machine with those tasks of the scope that suit it, and what is done besides. */
    private List<Finding> findings(PlannedVisit planned, List<ExtraWork> extra, Place place) {
        return site.machines().stream()
                .map(machine -> new Finding(machine.id(), Optional.empty(), Optional.empty(), Optional.empty(),
                        Stream.concat(
                                planned.tasksOn(machine, rates.tasks(), rates.plans().filters()).stream().map(Task::id),
                                extra.stream().filter(work -> work.machine().equals(machine.id())).map(ExtraWork::task))
                                .map(task -> new Finding.TaskDone(task, Outcome.CHARGED, place)).toList(),
                        List.of(), List.of(), place))
                .toList();
    }

    /**
     * When the site lets us in on the first working day from the planned one on; without access hours, when that day's first
     * window of the labor bands begins.
     */
    private ZonedDateTime arrival(LocalDate planned) {
        BandWeek week = rates.labor().week();
        LocalDate day = planned;
        while (day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY
                || week.isHoliday(day)) {
            day = day.plusDays(1);
        }
        DayOfWeek weekday = day.getDayOfWeek();
        LocalTime time = site.access().map(AccessHours::from)
                .or(() -> week.windows().stream().filter(window -> window.days().contains(weekday)).map(Window::from)
                        .min(Comparator.naturalOrder()))
                .orElse(LocalTime.MIDNIGHT);
        return day.atTime(time).atZone(zone);
    }
}
