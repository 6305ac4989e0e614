package icequill.days;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds days for visits that several people make together. They are found before those of one person, since fewer days suit them: one visit
 * after the other by their due days, each where it costs least beside what is fixed by then, as early in the day as all of its people can
 * be there. Each stays for his own minutes.
 */
final class CrewDays {

    private final List<WorkDay> days;
    private final List<Person> people;
    private final List<Fixed> fixed;

    /** A visit on a day with its people, and what it adds. */
    private record Choice(Wanted visit, WorkDay day, Team team, int begin, int cost) {

        Stream<Fixed> stays() {
            return team.going().stream().map(one -> new Fixed(visit.due().key(), one.person().name(), day.day(), begin,
                    begin + one.minutes(), visit.road()));
        }
    }

    private CrewDays(List<WorkDay> days, List<Person> people, List<Fixed> fixed) {
        this.days = days;
        this.people = people;
        this.fixed = new ArrayList<>(fixed);
    }

    /**
     * What was found.
     *
     * @param placed without reasons
     * @param fixed all that is fixed, the visits that were placed among them
     */
    record Found(List<Placed> placed, List<Fixed> fixed) {}

    static Found of(List<Wanted> visits, List<WorkDay> days, List<Person> people, List<Fixed> fixed) {
        CrewDays search = new CrewDays(days, people, fixed);
        List<Placed> placed = Wanted.inOrder(visits).stream().flatMap(visit -> search.place(visit).stream()).toList();
        return new Found(placed, search.fixed);
    }

    private Optional<Placed> place(Wanted visit) {
        List<Team> teams = Team.of(visit.due().work().crew(), people);
        Optional<Choice> best = days.stream().filter(day -> visit.isOn(day.day()))
                .flatMap(day -> teams.stream().flatMap(team -> choice(visit, day, team).stream()))
                .min(Comparator.comparingInt(Choice::cost));
        best.ifPresent(choice -> choice.stays().forEach(fixed::add));
        return best.map(choice -> new Placed(visit, choice.day().day(), choice.begin(), choice.team().going(),
                List.of()));
    }

    private Optional<Choice> choice(Wanted visit, WorkDay day, Team team) {
        return begin(visit, day, team, visit.stop().from()).map(begin -> new Choice(visit, day, team, begin,
                visit.cost(day.day(), team) + team.going().stream().mapToInt(one -> {
                    Tour before = Tour.fixed(day, one.person(), fixed);
                    return before.with(visit.stop(one.minutes(), begin)).map(Tour::driving).orElse(0)
                            - before.driving();
                }).sum()));
    }

    /** The first minute of a day from which on all can stay; empty where there is none. */
    private Optional<Integer> begin(Wanted visit, WorkDay day, Team team, int earliest) {
        int begin = earliest;
        for (Going one : team.going()) {
            Optional<Integer> found = Tour.fixed(day, one.person(), fixed)
                    .with(visit.stop(one.minutes(), begin)).flatMap(tour -> tour.begin(visit.due().key()));
            if (found.isEmpty()) {
                return found;
            }
            begin = found.get();
        }
        return begin == earliest ? Optional.of(begin) : begin(visit, day, team, begin);
    }
}
