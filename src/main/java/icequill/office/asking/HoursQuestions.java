package icequill.office.asking;

import icequill.explain.ConstantKey;
import icequill.work.ChargeClass;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * When somebody came and left, and what for.
 *
 * @param before the hours of whoever was asked about first, which are proposed
 */
record HoursQuestions(Setting setting, String person, Optional<Hours> before) {

    static final List<ChargeClass> LABOR = Stream.of(ChargeClass.values()).filter(ChargeClass::isLabor)
            .toList();

    Turn.Ask first(Function<Hours, Turn> next) {
        return asking().needed(asking().question("arrived", person)
                .proposing(before.map(hours -> hours.arrived().shortText())),
                answer -> Moment.read(setting, answer, setting.day(), arrived -> left(arrived, next)));
    }

    private Asking asking() {
        return setting.asking();
    }

    private Turn left(Moment arrived, Function<Hours, Turn> next) {
        return asking().needed(asking().question("left-at", person)
                .proposing(before.map(hours -> hours.left().shortText())),
                answer -> Moment.read(setting, answer, arrived.day(), left -> left.after(arrived)
                        .<Turn>map(later -> spentOn(arrived, later, next))
                        .orElseGet(() -> asking().wrong("left", answer, arrived.shortText()))));
    }

    private Turn spentOn(Moment arrived, Moment left, Function<Hours, Turn> next) {
        Question question = asking().question("spent-on", person).proposing(before
                .map(hours -> String.valueOf(LABOR.stream().map(ConstantKey::of).toList().indexOf(hours.on()) + 1)));
        return asking().oneOf(question, labor(setting),
                place -> next.apply(new Hours(arrived, left, ConstantKey.of(LABOR.get(place)))));
    }

    static List<String> labor(Setting setting) {
        return LABOR.stream().map(on -> name(setting, on)).toList();
    }

    static String name(Setting setting, ChargeClass on) {
        return setting.sentences().word("class." + ConstantKey.of(on));
    }
}
