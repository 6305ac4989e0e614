package icequill.office.asking;

import icequill.rates.Grade;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Who came: names, or the numbers of those who were here before, then the grade of each new one and the hours of all.
 *
 * @param known who was here before
 */
record PeopleQuestions(Setting setting, List<KnownPerson> known, Function<Draft, Turn> next) {

    private static final int MOST = 20;

    Turn.Ask first(Draft draft) {
        Question question = asking().question("who").choosing(Picks.numbered(known.stream().map(this::text).toList()))
                .proposing(known.size() == 1 ? Optional.of("1") : Optional.empty());
        return asking().text(question, answer -> people(answer).map(found -> graded(found, List.of(), draft))
                .orElseGet(() -> asking().wrong("who", answer, String.valueOf(known.size()))));
    }

    private Asking asking() {
        return setting.asking();
    }

    private String text(KnownPerson person) {
        return person.name() + person.grade().flatMap(setting.rates().labor()::grade)
                .map(grade -> ", " + setting.sentences().in(grade.name())).orElse("");
    }

    /** Each once; empty where a number is none of those offered. */
    private Optional<List<KnownPerson>> people(String answer) {
        boolean areNumbers = answer.matches("[0-9\\s,;]+");
        List<Optional<KnownPerson>> found = Stream.of(answer.split(areNumbers ? "[\\s,;]+" : "[,;]", -1))
                .map(String::strip).filter(word -> !word.isEmpty()).map(this::person).distinct().toList();
        return found.isEmpty() || found.size() > MOST || found.stream().anyMatch(Optional::isEmpty)
                ? Optional.empty()
                : Optional.of(found.stream().flatMap(Optional::stream).toList());
    }

    private Optional<KnownPerson> person(String word) {
        return word.matches("[0-9]+")
                ? Picks.number(word, known.size()).map(known::get)
                : Optional.of(known.stream().filter(person -> lower(person.name()).equals(lower(word))).findFirst()
                        .orElse(new KnownPerson(word, Optional.empty())));
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    private Turn graded(List<KnownPerson> left, List<KnownPerson> graded, Draft draft) {
        if (left.isEmpty()) {
            return hours(graded, Optional.empty(), draft);
        }
        KnownPerson person = left.getFirst();
        List<KnownPerson> rest = left.subList(1, left.size());
        List<Grade> grades = setting.rates().labor().grades();
        if (person.grade().flatMap(setting.rates().labor()::grade).isPresent()) {
            return graded(rest, added(graded, person), draft);
        }
        return asking().oneOf(asking().question("grade", person.name()),
                grades.stream().map(grade -> setting.sentences().in(grade.name())).toList(),
                place -> graded(rest, added(graded, person.graded(grades.get(place).id())), draft));
    }

    private static List<KnownPerson> added(List<KnownPerson> people, KnownPerson person) {
        return Stream.concat(people.stream(), Stream.of(person)).toList();
    }

    private Turn hours(List<KnownPerson> left, Optional<Hours> before, Draft draft) {
        return left.isEmpty()
                ? next.apply(draft)
                : new HoursQuestions(setting, left.getFirst().name(), before).first(hours -> hours(
                        left.subList(1, left.size()), Optional.of(hours),
                        draft.adding("people", row(left.getFirst(), hours))));
    }

    private static Draft row(KnownPerson person, Hours hours) {
        return Draft.EMPTY.with("name", person.name()).withAny("grade", person.grade())
                .with("arrived", hours.arrived().text()).with("left", hours.left().text())
                .with("on", hours.on());
    }
}
