package icequill.office.days;

import icequill.days.Fixed;
import icequill.days.Person;
import icequill.days.Road;
import icequill.files.form.VisitNames;
import icequill.files.form.VisitStays;
import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.entries.VisitQuestion;
import icequill.life.call.CallEvent.Plan;
import icequill.life.call.CallState;
import icequill.party.Shop;
import icequill.problem.Validated;
import icequill.shop.BookedCall;
import icequill.shop.BookedCalls;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Who makes visits, and where they are expected already.
 *
 * @param people who came, or are to come, within a year; by name, with the grades that they had last
 * @param stays of planned visits and of calls that somebody is to go to
 */
record KnownStays(List<Person> people, List<Stay> stays) {

    /** A call that is planned has no end yet: so many minutes are kept free for it (our estimate). */
    private static final int OF_A_CALL = 60;
    private static final int HOUR = 60;
    private static final int DAY = 24 * HOUR;

    /** Somebody at a site, by its id. */
    record Stay(String name, String person, String site, ZonedDateTime from, ZonedDateTime until) {

        /** On each of its days; a stay of several days takes the whole of each. */
        Stream<Fixed> fixed(Road road) {
            LocalDate first = from.toLocalDate();
            LocalDate last = until.toLocalDate();
            return first.equals(last)
                    ? Stream.of(new Fixed(name, person, first, minute(from), minute(until), road))
                    : first.datesUntil(last.plusDays(1)).map(day -> new Fixed(name, person, day, 0, DAY, road));
        }

        private static int minute(ZonedDateTime moment) {
            return moment.getHour() * HOUR + moment.getMinute();
        }
    }

    static Validated<KnownStays> in(Reading open, Shop shop, LocalDate first) {
        Set<String> withdrawn = open.entries().withdrawals().keySet();
        List<VisitEntry> visits = open.entries()
                .visits(new VisitQuestion(List.of(), Optional.of(first.minusYears(1)), Optional.empty())).stream()
                .filter(entry -> !withdrawn.contains(entry.id()) && !entry.isForgotten()).toList();
        Map<String, String> grades = new TreeMap<>();
        visits.forEach(entry -> grades.putAll(VisitNames.of(entry.data()).grades()));
        Stream<Stay> planned = visits.stream().filter(VisitEntry::isPlanned)
                .filter(entry -> !entry.ended().toLocalDate().isBefore(first))
                .flatMap(entry -> VisitStays.of(entry.data(), entry.began().getZone()).stays().stream()
                        .map(stay -> new Stay(entry.id(), stay.person(), entry.site(), stay.from(), stay.until())));
        return new BookedCalls(shop, open).all().map(calls -> new KnownStays(
                grades.entrySet().stream().map(person -> new Person(person.getKey(), person.getValue())).toList(),
                Stream.concat(planned, calls.stream().flatMap(call -> stay(call, visits).stream())).toList()));
    }

    /** Nothing for one that a visit is planned for. */
    private static Optional<Stay> stay(BookedCall call, List<VisitEntry> visits) {
        Optional<Plan> plan = call.state() instanceof CallState.Planned planned
                ? Optional.of(planned.plan())
                : Optional.empty();
        return plan.filter(found -> visits.stream().filter(VisitEntry::isPlanned)
                .noneMatch(entry -> VisitNames.of(entry.data()).call().filter(call.id()::equals).isPresent()))
                .map(found -> new Stay(call.id(), found.person(), call.site(), found.at(),
                        found.at().plusMinutes(OF_A_CALL)));
    }

    /** @param roads to sites, by their ids; empty where a site cannot be read */
    List<Fixed> fixed(Function<String, Optional<Road>> roads) {
        return stays.stream().flatMap(stay -> roads.apply(stay.site()).stream().flatMap(stay::fixed))
                .filter(fixed -> fixed.until() > fixed.from()).toList();
    }
}
