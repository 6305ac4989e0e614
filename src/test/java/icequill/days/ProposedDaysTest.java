package icequill.days;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.RatesFixture;
import icequill.agreement.PlannedVisit;
import icequill.explain.Phrase;
import icequill.party.AccessHours;
import icequill.party.Site;
import icequill.plans.CalendarVisit;
import icequill.pricer.StaffedVisit;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Days proposed for visits, against rules that are worked out anew, and against all ways there are. */
class ProposedDaysTest {

    /** A Monday. */
    private static final LocalDate MONDAY = LocalDate.parse("2026-08-03");
    private static final List<Person> PEOPLE = List.of(new Person("Ada", "lead"), new Person("Sol", "lead"));
    private static final int SEVEN = 7 * 60;
    private static final int FIVE = 17 * 60;
    private static final int DAY = 24 * 60;

    /** Visits with days, people and fixed stays. */
    record Case(List<Wanted> visits, List<WorkDay> days, List<Fixed> fixed) {

        ProposedDays proposed() {
            return ProposedDays.of(visits, days, PEOPLE, fixed);
        }
    }

    /** Somebody at a site for a time, as the test sees it. */
    private record Stay(Road road, int from, int until) {}

    /** Some visits are for two, of whom one leaves before the other. */
    static Stream<Case> crews() {
        return IntStream.range(0, 20).mapToObj(seed -> {
            Case one = made(new Random(2000 + seed), 6, 5);
            return new Case(IntStream.range(0, 6).mapToObj(i -> i % 2 == 0
                    ? one.visits().get(i)
                    : crew(one.visits().get(i))).toList(), one.days(), one.fixed());
        });
    }

    private static Wanted crew(Wanted alone) {
        Site site = alone.due().site();
        return wanted(site.id(), alone.road().minutes(), alone.road().area(), alone.due().day(),
                List.of(new StaffedVisit.Person("lead", alone.minutes()), new StaffedVisit.Person("helper", 45)),
                site.access(), site.closed());
    }

    /** Small enough that all ways can be tried. */
    static Stream<Case> small() {
        return IntStream.range(0, 40).mapToObj(seed -> made(new Random(seed), 3, 3));
    }

    static Stream<Case> large() {
        return IntStream.range(0, 6).mapToObj(seed -> made(new Random(1000 + seed), 24, 10));
    }

    @ParameterizedTest
    @MethodSource({"small", "large", "crews"})
    void everyVisit_isPlacedOnce_orToldWhyNot(Case one) {
        ProposedDays days = one.proposed();

        List<String> keys = Stream.concat(days.placed().stream().map(placed -> placed.visit().due().key()),
                days.left().stream().map(left -> left.due().key())).toList();
        assertThat(keys).containsExactlyInAnyOrderElementsOf(
                one.visits().stream().map(visit -> visit.due().key()).toList());
        assertThat(days.left()).allMatch(left -> !left.why().key().isEmpty());
        assertThat(one.proposed()).isEqualTo(days);
    }

    @ParameterizedTest
    @MethodSource({"small", "large", "crews"})
    void nobodyIsTwoPlacesAtOnce_andAccessAndWorkingHoursAreKept(Case one) {
        ProposedDays days = one.proposed();

        days.placed().forEach(placed -> {
            Site site = placed.visit().due().site();
            assertThat(site.closed()).doesNotContain(placed.day().getDayOfWeek());
            assertThat(placed.day()).isBetween(placed.visit().first(), placed.visit().last());
            assertThat(minute(placed.until()) - minute(placed.from())).isEqualTo(placed.visit().minutes());
            site.access().ifPresent(hours -> assertThat(!placed.from().isBefore(hours.from())
                    && !placed.until().isAfter(hours.until())).as(placed.toString()).isTrue());
        });
        one.days().forEach(day -> PEOPLE.forEach(person -> {
            List<Stay> stays = stays(one, days.placed(), day.day(), person);
            if (days.placed().stream().anyMatch(placed -> isOf(placed, day.day(), person))) {
                assertThat(stays.getFirst().from()).isGreaterThanOrEqualTo(SEVEN + stays.getFirst().road().minutes());
                assertThat(stays.getLast().until() + stays.getLast().road().minutes()).isLessThanOrEqualTo(FIVE);
                IntStream.range(1, stays.size()).forEach(i -> assertThat(stays.get(i).from())
                        .isGreaterThanOrEqualTo(stays.get(i - 1).until() + way(stays.get(i - 1).road(),
                                stays.get(i).road())));
            }
        }));
    }

    /** What is known to be best costs as much as the best of all ways; what is not costs no less. */
    @ParameterizedTest
    @MethodSource("small")
    void bestWay_isThatOfAllWays(Case one) {
        ProposedDays days = one.proposed();
        int least = new AllWays(one).least();

        assertThat(days.isBest()).isTrue();
        assertThat(cost(one, days)).isEqualTo(least);
    }

    /** By hand: both are due on Wednesday; one way of 30 minutes there and back and 10 between them is less than twice there and back. */
    @Test
    void sitesOfOneArea_areVisitedOnOneDay_andSayWhy() {
        LocalDate wednesday = MONDAY.plusDays(2);
        Case one = new Case(List.of(wanted("crumb-lane", 30, "A", wednesday, 60, Optional.empty(), Set.of()),
                wanted("mill-lane", 30, "A", wednesday, 60, Optional.empty(),
                        Set.of(DayOfWeek.WEDNESDAY))),
                workDays(5), List.of());

        ProposedDays days = one.proposed();

        assertThat(days.placed()).extracting(placed -> placed.day() + " " + placed.going().getFirst().person().name())
                .containsExactly("2026-08-04 Ada", "2026-08-04 Ada");
        assertThat(days.driving()).isEqualTo(70);
        assertThat(days.placed().getFirst().reasons()).extracting(Phrase::key)
                .contains("days.before", "days.near");
    }

    @Test
    void visitThatFitsNowhere_isToldWhy() {
        AccessHours short3 = new AccessHours(LocalTime.of(9, 0), LocalTime.of(10, 0));
        Wanted tooLong = wanted("inn", 30, "A", MONDAY, 90, Optional.of(short3), Set.of());
        Wanted late = new Wanted(tooLong.due(), tooLong.road(), 30, MONDAY, MONDAY.minusDays(1), Optional.empty());
        Wanted closed = wanted("club", 30, "A", MONDAY, 60, Optional.empty(), Set.of(DayOfWeek.values()));
        Fixed allDay = new Fixed("repair", "Ada", MONDAY, SEVEN + 30, FIVE - 30, new Road("pier", 30, "B"));
        Fixed alsoSol = new Fixed("repair", "Sol", MONDAY, SEVEN + 30, FIVE - 30, new Road("pier", 30, "B"));
        Wanted free = wanted("bar", 30, "A", MONDAY, 60, Optional.empty(), Set.of());

        assertThat(List.of(why(tooLong, List.of()), why(late, List.of()), why(closed, List.of()),
                why(free, List.of(allDay, alsoSol)))).containsExactly("days.too-long", "days.next-nearer",
                        "days.none-open", "days.full");
    }

    /**
     * By hand: Sol is at the pier until 9:30, 20 minutes from the shop, and the hotel's 30 minutes are over the shop, so that he is there at 10:20, where Ada
     * waits for him; she stays 90 minutes, he 60. The bar, in the hotel's area and due that day, is 10 minutes on: he is there at 11:30.
     */
    @Test
    void visitOfTwo_beginsOnceBothAreThere_andEachStaysForHisMinutes() {
        Wanted hotel = wanted("hotel", 30, "A", MONDAY,
                List.of(new StaffedVisit.Person("lead", 90), new StaffedVisit.Person("lead", 60)), Optional.empty(),
                Set.of());
        Wanted bar = wanted("bar-1", 30, "A", MONDAY, 45, Optional.empty(), Set.of());
        Fixed pier = new Fixed("repair", "Sol", MONDAY, SEVEN + 30, 9 * 60 + 30, new Road("pier", 20, "B"));

        ProposedDays days = ProposedDays.of(List.of(bar, hotel), workDays(1), PEOPLE, List.of(pier));

        assertThat(days.placed()).extracting(one -> one.visit().due().site().id() + " " + one.from() + " "
                + one.until() + " " + one.going().stream().map(go -> go.person().name() + " " + go.minutes()).toList())
                .containsExactly("hotel 10:20 11:50 [Ada 90, Sol 60]", "bar-1 11:30 12:15 [Sol 45]");
        assertThat(days.isBest()).isFalse();
    }

    @Test
    void visitOfTwo_goesByGrades_andNeedsTwo() {
        List<Person> people = List.of(new Person("Ada", "lead"), new Person("Ida", "helper"),
                new Person("Sol", "lead"));
        Wanted hotel = wanted("hotel-1", 30, "A", MONDAY,
                List.of(new StaffedVisit.Person("helper", 90), new StaffedVisit.Person("lead", 60)), Optional.empty(),
                Set.of());

        assertThat(ProposedDays.of(List.of(hotel), workDays(1), people, List.of()).placed().getFirst().going())
                .extracting(go -> go.person().name()).containsExactly("Ida", "Sol");
        assertThat(ProposedDays.of(List.of(hotel), workDays(1), people.subList(0, 1), List.of()).left())
                .extracting(left -> left.why().key()).containsExactly("days.too-few");
    }

    /** All begin at once and are different people; nobody is planned for a visit of two alone. */
    @ParameterizedTest
    @MethodSource("crews")
    void visitOfTwo_hasTwoPeople(Case one) {
        ProposedDays days = one.proposed();

        assertThat(days.placed()).allMatch(placed -> placed.going().stream().map(Going::person).distinct()
                .count() == placed.visit().due().people());
        assertThat(days.placed()).anyMatch(placed -> placed.going().size() > 1);
    }

    private static String why(Wanted visit, List<Fixed> fixed) {
        return ProposedDays.of(List.of(visit), workDays(1), PEOPLE, fixed).left().getFirst().why().key();
    }

    private static Case made(Random random, int visits, int days) {
        List<Wanted> wanted = IntStream.range(0, visits).mapToObj(i -> {
            boolean hasHours = random.nextBoolean();
            int from = 8 + random.nextInt(5);
            return wanted("site-" + i, 10 + random.nextInt(40), random.nextBoolean() ? "A" : "B",
                    MONDAY.plusDays(random.nextInt(days + 4) - 2), 60 + random.nextInt(150),
                    hasHours
                            ? Optional.of(new AccessHours(LocalTime.of(from, 0), LocalTime.of(from + 4, 0)))
                            : Optional.empty(),
                    random.nextInt(3) == 0
                            ? Set.of(DayOfWeek.of(1 + random.nextInt(5)))
                            : Set.of());
        }).toList();
        int begin = SEVEN + 60 + random.nextInt(240);
        return new Case(wanted, workDays(days), random.nextBoolean()
                ? List.of(new Fixed("repair", "Ada", MONDAY, begin, begin + 120, new Road("pier", 20, "A")))
                : List.of());
    }

    private static List<WorkDay> workDays(int count) {
        return MONDAY.datesUntil(MONDAY.plusDays(30)).filter(day -> day.getDayOfWeek().getValue() < 6).limit(count)
                .map(day -> new WorkDay(day, SEVEN, FIVE)).toList();
    }

    private static Wanted wanted(String id, int way, String area, LocalDate due, int minutes,
            Optional<AccessHours> access, Set<DayOfWeek> closed) {
        return wanted(id, way, area, due, List.of(new StaffedVisit.Person("lead", minutes)), access, closed);
    }

    /** @param crew whoever stays longest first */
    private static Wanted wanted(String id, int way, String area, LocalDate due, List<StaffedVisit.Person> crew,
            Optional<AccessHours> access, Set<DayOfWeek> closed) {
        Site some = RatesFixture.site();
        Site site = new Site(id, some.customer(), List.of(), id, Optional.empty(), some.address(), some.kind(),
                some.conditions(), some.miles(), some.taxPlace(), access, Set.of(), closed, Optional.empty(),
                Optional.empty(), some.machines(), some.layout(), List.of(), some.contacts(), Optional.empty());
        PlannedVisit visit = new PlannedVisit(0, due, RatesFixture.tier("quarterly", 4).slots().getFirst(), false,
                Optional.empty());
        DueVisit one = new DueVisit("A-1", site,
                new CalendarVisit(visit, Set.of("head"), crew),
                due.plusDays(45), new Standing(Standing.State.DUE, Optional.empty()));
        return Wanted.of(one, new Road(id, way, area), crew.getFirst().minutes(), MONDAY,
                id.endsWith("1") ? Optional.of("Sol") : Optional.empty());
    }

    private static boolean isOf(Placed placed, LocalDate day, Person person) {
        return placed.day().equals(day) && placed.going().stream().anyMatch(one -> one.person().equals(person));
    }

    private static Stay stay(Placed placed, Person person) {
        int minutes = placed.going().stream().filter(one -> one.person().equals(person)).findFirst().orElseThrow()
                .minutes();
        return new Stay(placed.visit().road(), minute(placed.from()), minute(placed.from()) + minutes);
    }

    private static List<Stay> stays(Case one, List<Placed> placed, LocalDate day, Person person) {
        return Stream.concat(
                one.fixed().stream().filter(stay -> stay.day().equals(day) && stay.person().equals(person.name()))
                        .map(stay -> new Stay(stay.road(), stay.from(), stay.until())),
                placed.stream().filter(each -> isOf(each, day, person)).map(each -> stay(each, person)))
                .sorted(Comparator.comparingInt(Stay::from)).toList();
    }

    private static int minute(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }

    /** From one site to another: over the shop, unless both lie in one area. */
    private static int way(Road one, Road other) {
        int over = one.minutes() + other.minutes();
        return one.site().equals(other.site())
                ? 0
                : one.area().equals(other.area())
                        ? Math.max(Math.min(10, over), Math.max(one.minutes(), other.minutes())
                                - Math.min(one.minutes(), other.minutes()))
                        : over;
    }

    private static int driving(List<Road> roads) {
        int sum = 0;
        for (int i = 1; i < roads.size(); i++) {
            sum += way(roads.get(i - 1), roads.get(i));
        }
        return roads.isEmpty() ? 0 : roads.getFirst().minutes() + sum + roads.getLast().minutes();
    }

    /** 4 minutes for each day before its own, 12 for each after, 15 for another person, 100,000 for a visit that is left out. */
    private static int weight(Wanted visit, LocalDate day, Person person) {
        LocalDate own = visit.due().day().isBefore(MONDAY) ? MONDAY : visit.due().day();
        int after = (int) (day.toEpochDay() - own.toEpochDay());
        return (after > 0 ? 12 * after : -4 * after)
                + (visit.person().isPresent() && !visit.person().get().equals(person.name()) ? 15 : 0);
    }

    private static int cost(Case one, ProposedDays days) {
        int weights = days.placed().stream().mapToInt(each -> weight(each.visit(), each.day(),
                each.going().getFirst().person())).sum();
        int driving = one.days().stream().flatMap(day -> PEOPLE.stream()
                .map(person -> driving(stays(one, days.placed(), day.day(), person).stream().map(Stay::road).toList())))
                .mapToInt(Integer::intValue).sum();
        return weights + driving + 100_000 * days.left().size();
    }

    /** All ways of giving each visit a day and a person or none, and of ordering each day. */
    private record AllWays(Case one) {

        int least() {
            return least(0, new int[one.visits().size()]);
        }

        private int least(int next, int[] choice) {
            if (next == choice.length) {
                return cost(choice);
            }
            int least = Integer.MAX_VALUE;
            for (int place = -1; place < one.days().size() * PEOPLE.size(); place++) {
                choice[next] = place;
                least = Math.min(least, least(next + 1, choice));
            }
            return least;
        }

        private int cost(int[] choice) {
            int cost = 0;
            for (int i = 0; i < choice.length; i++) {
                Wanted visit = one.visits().get(i);
                if (choice[i] < 0) {
                    cost += 100_000;
                } else {
                    LocalDate day = one.days().get(choice[i] / PEOPLE.size()).day();
                    if (visit.due().site().closed().contains(day.getDayOfWeek()) || day.isBefore(visit.first())
                            || day.isAfter(visit.last())) {
                        return Integer.MAX_VALUE;
                    }
                    cost += weight(visit, day, PEOPLE.get(choice[i] % PEOPLE.size()));
                }
            }
            for (int place = 0; place < one.days().size() * PEOPLE.size(); place++) {
                int driving = driving(choice, place);
                if (driving == Integer.MAX_VALUE) {
                    return driving;
                }
                cost += driving;
            }
            return cost;
        }

        private int driving(int[] choice, int place) {
            LocalDate day = one.days().get(place / PEOPLE.size()).day();
            Person person = PEOPLE.get(place % PEOPLE.size());
            List<Object> stops = new ArrayList<>(one.fixed().stream()
                    .filter(stay -> stay.day().equals(day) && stay.person().equals(person.name())).toList());
            IntStream.range(0, choice.length).filter(i -> choice[i] == place)
                    .forEach(i -> stops.add(one.visits().get(i)));
            return ordered(stops, new ArrayList<>());
        }

        private static int ordered(List<Object> left, List<Object> order) {
            if (left.isEmpty()) {
                return isKept(order)
                        ? ProposedDaysTest.driving(order.stream().map(AllWays::road).toList())
                        : Integer.MAX_VALUE;
            }
            int least = Integer.MAX_VALUE;
            for (Object stop : left) {
                List<Object> rest = new ArrayList<>(left);
                rest.remove(stop);
                List<Object> more = new ArrayList<>(order);
                more.add(stop);
                least = Math.min(least, ordered(rest, more));
            }
            return least;
        }

        private static Road road(Object stop) {
            return stop instanceof Fixed stay ? stay.road() : ((Wanted) stop).road();
        }

        private static boolean isKept(List<Object> order) {
            int now = SEVEN;
            Road at = new Road("shop", 0, "shop");
            for (Object stop : order) {
                now += way(at, road(stop));
                at = road(stop);
                if (stop instanceof Fixed stay) {
                    if (now > stay.from()) {
                        return false;
                    }
                    now = stay.until();
                } else {
                    Wanted visit = (Wanted) stop;
                    Optional<AccessHours> access = visit.due().site().access();
                    now = Math.max(now, access.map(hours -> minute(hours.from())).orElse(0)) + visit.minutes();
                    if (now > access.map(hours -> minute(hours.until())).orElse(DAY)) {
                        return false;
                    }
                }
            }
            return now + at.minutes() <= FIVE;
        }
    }
}
