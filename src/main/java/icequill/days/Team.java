package icequill.days;

import icequill.pricer.StaffedVisit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Those who make a visit together.
 *
 * @param going one for each of the crew that was planned, in its order
 * @param others how many have another grade than was planned for them
 */
record Team(List<Going> going, int others) {

    Team {
        going = List.copyOf(going);
    }

    /** All there are, each once whatever the order; none where there are too few people. */
    static List<Team> of(List<StaffedVisit.Person> crew, List<Person> people) {
        return chosen(crew.size(), people).stream().map(some -> by(crew, some)).toList();
    }

    private static List<List<Person>> chosen(int count, List<Person> people) {
        if (count == 0) {
            return List.of(List.of());
        }
        List<List<Person>> all = new ArrayList<>();
        for (int first = 0; first <= people.size() - count; first++) {
            for (List<Person> rest : chosen(count - 1, people.subList(first + 1, people.size()))) {
                List<Person> some = new ArrayList<>(List.of(people.get(first)));
                some.addAll(rest);
                all.add(some);
            }
        }
        return all;
    }

    /** Each does what is planned for his grade, as far as somebody has it; the others what is left. */
    private static Team by(List<StaffedVisit.Person> crew, List<Person> some) {
        List<Person> left = new ArrayList<>(some);
        Map<Integer, Person> found = new TreeMap<>();
        IntStream.range(0, crew.size()).forEach(i -> left.stream()
                .filter(person -> person.grade().equals(crew.get(i).grade())).findFirst()
                .ifPresent(person -> {
                    left.remove(person);
                    found.put(i, person);
                }));
        int others = left.size();
        return new Team(IntStream.range(0, crew.size())
                .mapToObj(i -> new Going(Objects.requireNonNullElseGet(found.get(i), left::removeFirst),
                        crew.get(i).minutes()))
                .toList(), others);
    }

    List<Person> people() {
        return going.stream().map(Going::person).toList();
    }
}
