package icequill.visits;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.planner.Timetable;
import icequill.planner.Timetable.Entry;
import icequill.planner.Timetable.Kind;
import icequill.work.Attendance;
import icequill.work.BandWeek;
import icequill.work.Unit;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What else must be known of a timetable: where it needs more time than there is (than somebody is planned for, than the site lets us
 * in, than a working day has), who has a break when, and that nobody works alone where he may fall.
 *
 * @param people names, by their numbers in the timetable
 * @param from the minute of the visit from which on it was planned; 0 for one to come
 */
record Overruns(VisitContext hand, Timetable table, List<String> people, int from) {

    List<Phrase> phrases() {
        List<Phrase> phrases = new ArrayList<>();
        if (from > 0) {
            phrases.add(Phrase.of("remark.planned-anew", time(moment(from)), time(moment(table.minutes()))));
        }
        table.overstays().stream().map(this::overstay).forEach(phrases::add);
        IntStream.range(0, people.size()).forEach(person -> planned(person).ifPresent(phrases::add));
        doneBy().ifPresent(phrases::add);
        access().ifPresent(phrases::add);
        day().ifPresent(phrases::add);
        table.entries().stream().filter(entry -> entry.kind() == Kind.BREAK && entry.end() > from).map(this::rest)
                .forEach(phrases::add);
        if (VisitWorkAssembly.of(hand).isAccompanied()) {
            phrases.add(Phrase.of("remark.not-alone"));
        }
        return phrases;
    }

    private Phrase rest(Entry entry) {
        return Phrase.of("remark.break", new Fact.Text(people.get(entry.people().getFirst())),
                time(moment(entry.start())), time(moment(entry.end())));
    }

    /** Somebody who should be gone before he comes is needed from when he comes. */
    private Phrase overstay(Timetable.Overstay overstay) {
        Attendance person = hand.visit().people().stream()
                .filter(attendance -> attendance.person().equals(people.get(overstay.person()))).findFirst()
                .orElseThrow();
        ZonedDateTime mustLeave = person.mustLeave().orElseThrow();
        ZonedDateTime leaves = (mustLeave.isBefore(person.arrived()) ? person.arrived() : mustLeave)
                .plusMinutes(overstay.minutes());
        return Phrase.of("remark.overstay", new Fact.Text(person.person()), time(mustLeave), time(leaves),
                minutes(mustLeave, leaves));
    }

    private Optional<Phrase> doneBy() {
        ZonedDateTime over = moment(table.minutes());
        return hand.visit().doneBy().filter(over::isAfter)
                .map(wanted -> Phrase.of("remark.done-by", time(wanted), time(over), minutes(wanted, over)));
    }

    private static Fact minutes(ZonedDateTime from, ZonedDateTime until) {
        return Fact.number(Duration.between(from, until).toMinutes(), Unit.MINUTE.symbol());
    }

    /** Nobody is planned whose name is not known yet. */
    private Optional<Phrase> planned(int person) {
        List<Attendance> spells = hand.visit().people().stream()
                .filter(attendance -> attendance.person().equals(people.get(person))).toList();
        List<Entry> tasks = table.entries().stream()
                .filter(entry -> entry.kind() == Kind.TASK && entry.people().contains(person)).toList();
        if (spells.isEmpty() || tasks.isEmpty()) {
            return Optional.empty();
        }
        ZonedDateTime arrives = spells.stream().map(Attendance::arrived).min(Comparator.naturalOrder()).orElseThrow();
        ZonedDateTime leaves = spells.stream().map(Attendance::left).max(Comparator.naturalOrder()).orElseThrow();
        ZonedDateTime first = moment(tasks.stream().mapToInt(Entry::start).min().orElseThrow());
        ZonedDateTime last = moment(tasks.stream().mapToInt(Entry::end).max().orElseThrow());
        return arrives.isAfter(first) || leaves.isBefore(last)
                ? Optional.of(Phrase.of("remark.planned-otherwise", new Fact.Text(people.get(person)), time(arrives),
                        time(leaves), time(first), time(last)))
                : Optional.empty();
    }

    /** Hours of access are those of working days. */
    private Optional<Phrase> access() {
        ZonedDateTime begins = moment(0);
        return hand.site().access().filter(hours -> week().isWorkday(begins.toLocalDate()))
                .filter(hours -> hours.left(begins.toLocalTime()) < table.minutes())
                .map(hours -> hours.contains(begins.toLocalTime())
                        ? pastAccess(hours.left(begins.toLocalTime()))
                        : Phrase.of("remark.outside-access", time(begins), time(moment(table.minutes())),
                                new Fact.Time(hours.from()), new Fact.Time(hours.until())));
    }

    private Phrase pastAccess(int left) {
        String stay = IntStream.range(0, people.size())
                .filter(person -> table.entries().stream().anyMatch(entry -> entry.kind() == Kind.TASK
                        && entry.end() > left && entry.people().contains(person)))
                .mapToObj(people::get).collect(Collectors.joining(", "));
        return Phrase.of("remark.past-access", time(moment(left)), time(moment(table.minutes())),
                Fact.number(table.minutes() - left, Unit.MINUTE.symbol()), new Fact.Text(stay.isEmpty() ? "–" : stay));
    }

    private Optional<Phrase> day() {
        return week().longestWindow(moment(0).toLocalDate()).filter(longest -> longest < table.minutes())
                .map(longest -> Phrase.of("remark.longer-than-day",
                        Fact.number(table.minutes(), Unit.MINUTE.symbol()),
                        Fact.number(longest, Unit.MINUTE.symbol())));
    }

    private BandWeek week() {
        return hand.rates().labor().week();
    }

    private ZonedDateTime moment(int minute) {
        return hand.visit().began().plusMinutes(minute);
    }

    private static Fact time(ZonedDateTime moment) {
        return new Fact.Time(moment.toLocalTime());
    }
}
