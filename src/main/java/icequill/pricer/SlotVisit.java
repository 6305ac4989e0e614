package icequill.pricer;

import icequill.agreement.FilterRule;
import icequill.agreement.PlannedVisit;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Site;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Counting.Overtime;
import icequill.rates.Rates;
import icequill.work.Attendance;
import icequill.work.ChargeClass;
import icequill.work.Finding;
import icequill.work.Outcome;
import icequill.work.PurchaseOrder;
import icequill.work.Task;
import icequill.work.Unit;
import icequill.work.Visit;
import icequill.work.Visit.PriceTerms;
import icequill.work.VisitLine;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
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
 * @param byTime whether labor and doses are charged though there are flat prices
 */
record SlotVisit(Site site, Rates rates, ZoneId zone, boolean byTime) {

    private static final int HOUR = 60;

    /** The visit at the hour asked for, or else at the one at which it costs least, the earliest of them. */
    Validated<PricedSlot> cheapest(StaffedVisit staffed, List<ExtraWork> extra) {
        ArrivalTimes times = new ArrivalTimes(rates.labor().week(), site.access(), turns());
        LocalDate day = times.day(staffed.visit().date());
        List<LocalDateTime> arrivals = staffed.arrive().map(day::atTime).map(List::of)
                .orElseGet(() -> times.on(day, longest(staffed)));
        Problems problems = new Problems();
        List<PricedSlot> found = new ArrayList<>();
        for (LocalDateTime arrival : arrivals) {
            if (problems.isEmpty()) {
                problems.take(Pricer.price(of(staffed, extra, arrival.atZone(zone)), site, rates))
                        .map(priced -> new PricedSlot(staffed.visit(), priced, arrival.toLocalTime(),
                                remarks(staffed, arrival)))
                        .ifPresent(found::add);
            }
        }
        return problems.or(() -> found.stream().min(Comparator.comparing(slot -> slot.priced().net())).orElseThrow());
    }

    /** Minutes from arrival on at which the price of an hour may change. */
    private List<Integer> turns() {
        return Stream.concat(Stream.of(HOUR, rates.serviceCall().includes()),
                rates.labor().counting().overtime().map(Overtime::after).stream()).toList();
    }

    /** With more work than the visit's scope. */
    private Visit of(StaffedVisit staffed, List<ExtraWork> extra, ZonedDateTime arrival) {
        PlannedVisit planned = staffed.visit();
        Place place = planned.slot().scope().place();
        List<Attendance> people = staffed.crew().stream()
                .map(person -> new Attendance("", person.grade(), List.of(new Attendance.Spell(arrival,
                        arrival.plusMinutes(person.minutes()), ChargeClass.CLEANING, Outcome.CHARGED)), place))
                .toList();
        List<VisitLine> lines = new ArrayList<>(staffed.modifiers());
        if (planned.filtersDue()) {
            rates.plans().filters().ifPresent(rule -> lines.addAll(filters(rule)));
        }
        return new Visit("", site.id(), Optional.empty(), PurchaseOrder.NONE, Outcome.CHARGED, people,
                Optional.empty(), Optional.empty(), findings(planned, extra, place),
                lines, terms(planned), Optional.empty(),
                Visit.Handover.NONE, place);
    }

    /** At the flat prices of its scope, where there are such. */
    private PriceTerms terms(PlannedVisit planned) {
        String scope = planned.slot().scope().id();
        return byTime || !rates.plans().flat().has(scope)
                ? PriceTerms.USUAL
                : PriceTerms.flat(new Visit.Named(scope, planned.slot().scope().place()));
    }

    /** That the work takes longer than the site lets us in, or than a working day, where it does. */
    private List<Phrase> remarks(StaffedVisit staffed, LocalDateTime arrival) {
        int longest = longest(staffed);
        Fact takes = Fact.number(longest, Unit.MINUTE.symbol());
        Optional<Phrase> access = site.access().filter(hours -> hours.left(arrival.toLocalTime()) < longest)
                .map(hours -> Phrase.of("remark.access-too-short", takes, new Fact.Time(hours.from()),
                        new Fact.Time(hours.until())));
        Optional<Phrase> day = rates.labor().week().longestWindow(arrival.toLocalDate())
                .filter(window -> window < longest)
                .map(window -> Phrase.of("remark.longer-than-day", takes,
                        Fact.number(window, Unit.MINUTE.symbol())));
        return Stream.concat(access.stream(), day.stream()).toList();
    }

    private static int longest(StaffedVisit staffed) {
        return staffed.crew().stream().mapToInt(StaffedVisit.Person::minutes).max().orElse(0);
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
}
