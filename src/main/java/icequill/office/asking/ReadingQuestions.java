package icequill.office.asking;

import icequill.party.Machine;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What was measured at the machines, before the work and after it, one reading after the other. */
record ReadingQuestions(Setting setting, Function<Draft, Turn> next) {

    private static final String MACHINES = "machines";
    private static final int LONGEST_UNIT = 20;

    Turn first(Draft draft) {
        List<Machine> machines = setting.machines(draft);
        return machines.size() == 1
                ? what(0, draft)
                : asking().oneOrNone(asking().question("reading-at"), machines.stream().map(setting::name).toList(),
                        place -> place.map(found -> what(found, draft)).orElseGet(() -> next.apply(draft)));
    }

    private Asking asking() {
        return setting.asking();
    }

    private Turn what(int place, Draft draft) {
        Machine machine = setting.machines(draft).get(place);
        return asking().textOrNone(asking().question("reading", setting.name(machine)),
                what -> what.map(found -> unit(place, found, draft))
                        .orElseGet(() -> setting.machines(draft).size() == 1 ? next.apply(draft) : first(draft)));
    }

    private Turn unit(int place, String what, Draft draft) {
        return asking().textOrNone(asking().question("reading-unit", what), LONGEST_UNIT,
                unit -> value("reading-before", what, before -> value("reading-after", what,
                        after -> before.isEmpty() && after.isEmpty()
                                ? asking().wrong("reading", what)
                                : what(place, draft.withRow(MACHINES, place, draft.row(MACHINES, place).adding(
                                        "readings", reading(what, unit, before, after)))))));
    }

    private Turn value(String key, String what, Function<Optional<String>, Turn> then) {
        return asking().textOrNone(asking().question(key, what), then);
    }

    private static Draft reading(String what, Optional<String> unit, Optional<String> before,
            Optional<String> after) {
        return Draft.EMPTY.with("what", what).with("unit", unit.orElse("")).withAny("before", before)
                .withAny("after", after);
    }
}
