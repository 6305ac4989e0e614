package icequill.office.asking;

import icequill.party.Machine;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** For which side of each machine somebody called, from which the shop learns how soon dirt stops machines. */
record SideQuestions(Setting setting, Function<Draft, Turn> next) {

    private static final String MACHINES = "machines";
    private static final List<String> SIDES = List.of("condenser", "water", "other");

    Turn first(Draft draft) {
        return at(0, draft);
    }

    private Turn at(int place, Draft draft) {
        List<Machine> machines = setting.machines(draft);
        return place == machines.size()
                ? next.apply(draft)
                : setting.asking().oneOrNone(setting.asking().question("side", setting.name(machines.get(place))),
                        Stream.concat(SIDES.stream(), Stream.of("unknown"))
                                .map(side -> setting.sentences().word("call-side." + side)).toList(),
                        side -> at(place + 1, side.filter(known -> known < SIDES.size())
                                .map(known -> draft.withRow(MACHINES, place,
                                        draft.row(MACHINES, place).with("side", SIDES.get(known))))
                                .orElse(draft)));
    }
}
