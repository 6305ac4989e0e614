package icequill.office.asking;

import icequill.explain.ConstantKey;
import icequill.work.ChargeClass;
import java.util.List;
import java.util.function.Function;

/** Whose time went into several kinds of work, and for each of them into which, one after the other until he left. */
record DividedTimeQuestions(Setting setting, Function<Draft, Turn> next) {

    private static final String PEOPLE = "people";

    Turn first(Draft draft) {
        List<String> names = draft.texts(PEOPLE, "name");
        return names.size() == 1
                ? each(List.of(0), draft)
                : asking().someOf(asking().question("divided-who"), Picks.numbered(names), Picks::numbers, "numbers",
                        places -> each(places, draft));
    }

    private Asking asking() {
        return setting.asking();
    }

    private Turn each(List<Integer> left, Draft draft) {
        if (left.isEmpty()) {
            return next.apply(draft);
        }
        int place = left.getFirst();
        Draft person = draft.row(PEOPLE, place);
        return spell(person.without("on"), Moment.written(person.text("arrived")), told -> each(
                left.subList(1, left.size()), draft.withRow(PEOPLE, place, told)));
    }

    private Turn spell(Draft person, Moment from, Function<Draft, Turn> then) {
        return asking().oneOf(asking().question("divided-on", person.text("name"), from.shortText()),
                HoursQuestions.labor(setting),
                place -> until(person, from, HoursQuestions.LABOR.get(place), then));
    }

    private Turn until(Draft person, Moment from, ChargeClass on, Function<Draft, Turn> then) {
        Moment left = Moment.written(person.text("left"));
        return asking().needed(
                asking().question("divided-until", person.text("name"), HoursQuestions.name(setting, on))
                        .proposing(left.shortText()),
                answer -> Moment.read(setting, answer, from.day(), until -> until.after(from)
                        .filter(later -> later.text().compareTo(left.text()) <= 0)
                        .<Turn>map(later -> spent(person, later, on, left, then))
                        .orElseGet(() -> asking().wrong("until", answer, from.shortText(), left.shortText()))));
    }

    /** The last spell ends when the person left. */
    private Turn spent(Draft person, Moment until, ChargeClass on, Moment left, Function<Draft, Turn> then) {
        Draft told = person.adding("spent",
                Draft.EMPTY.with("until", until.text()).with("on", ConstantKey.of(on)));
        return until.equals(left) ? then.apply(told) : spell(told, until, then);
    }
}
