package icequill.office.days;

import icequill.days.DueVisit;
import icequill.days.Fixed;
import icequill.days.Person;
import icequill.days.ProposedDays;
import icequill.days.Road;
import icequill.days.Wanted;
import icequill.days.WorkDay;
import icequill.money.Exact;
import icequill.party.Site;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * All that days are proposed by.
 *
 * @param first the first day that may be proposed
 * @param due visits of agreements, whatever became of them
 */
record DaysDesk(ShopFolder shop, Rates rates, LocalDate first, LocalDate until, DueCare due, AttendedVisits attended,
        KnownStays stays) {

    /** Miles an hour on the way, where the rates say nothing (our estimate). */
    private static final BigDecimal USUAL_SPEED = BigDecimal.valueOf(40);
    private static final int HOUR = 60;
    private static final int DAY = 24 * HOUR;
    /** Days after the last due day on which a visit may be made. */
    private static final int AFTER = 14;

    /** As the shop and its book stand. */
    static Validated<DaysDesk> of(ShopBook book, LocalDate first, LocalDate until) {
        ShopFolder shop = BookForms.shop(book);
        Problems problems = new Problems();
        Optional<Rates> rates = shop.schedule().flatMap(schedule -> problems.take(schedule.asOf(first)));
        problems.addAll(shop.problems());
        return problems.or(() -> rates.orElseThrow()).then(known -> book
                .read(open -> KnownStays.in(open, shop.shop().orElseThrow(), first)
                        .map(stays -> new DaysDesk(shop, known, first, until, new DueCare(List.of(), Set.of(),
                                List.of()), AttendedVisits.in(open), stays)))
                .then(desk -> DueCare.of(book, desk.attended(), first, until).map(desk::with)));
    }

    private DaysDesk with(DueCare care) {
        return new DaysDesk(shop, rates, first, until, care, attended, stays);
    }

    /** Those who make visits, or of them those that are named. */
    Validated<List<Person>> people(List<String> names) {
        Problems problems = new Problems();
        List<String> known = stays.people().stream().map(Person::name).toList();
        names.stream().filter(name -> !known.contains(name)).forEach(name -> problems
                .add(Problem.unknownName(new Place("", 0, "person"), "person", name, known)));
        return problems.or(() -> stays.people().stream()
                .filter(person -> names.isEmpty() || names.contains(person.name())).toList());
    }

    ProposedDays proposed(List<Person> people) {
        return ProposedDays.of(open().stream().filter(visit -> ProposedDays.unsuited(visit).isEmpty())
                .map(visit -> Wanted.of(visit, road(visit.site()), visit.minutes().orElseThrow(), first,
                        attended.lastPerson(visit.site().id())))
                .toList(), workDays(), people, fixed());
    }

    /** Visits that are to be seen to. */
    List<DueVisit> open() {
        return due.visits().stream().filter(DueVisit::isOpen).toList();
    }

    List<Fixed> fixed() {
        Map<String, Optional<Road>> roads = new HashMap<>();
        return stays.fixed(site -> roads.computeIfAbsent(site,
                id -> shop.site(id, Place.NOWHERE).map(this::road)));
    }

    private Road road(Site site) {
        BigFraction minutes = Exact.of(site.miles()).multiply(HOUR)
                .divide(Exact.of(rates.serviceCall().speed().orElse(USUAL_SPEED)));
        return new Road(site.id(), Exact.upToMultiple(minutes, BigDecimal.ONE).intValue(),
                site.address().country() + " " + site.address().postalCode());
    }

    private List<WorkDay> workDays() {
        List<WorkDay> days = new ArrayList<>();
        first.datesUntil(until.plusDays(AFTER + 1)).filter(rates.labor().week()::isWorkday)
                .forEach(day -> rates.labor().week().workingHours(day)
                        .ifPresent(hours -> days.add(new WorkDay(day, minute(hours.from()),
                                hours.until().equals(LocalTime.MIDNIGHT) ? DAY : minute(hours.until())))));
        return days;
    }

    private static int minute(LocalTime time) {
        return time.getHour() * HOUR + time.getMinute();
    }
}
