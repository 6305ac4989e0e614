package icequill.office.asking;

import icequill.party.Machine;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** What refrigerant was added to a machine or recovered from it, by whom, and what was found and done about a leak. */
record RefrigerantQuestions(Setting setting, Function<Draft, Turn> next) {

    private static final String MACHINES = "machines";
    private static final List<String> UNITS = List.of("oz", "lb");
    private static final List<String> PURPOSES = List.of("service", "first-charge", "disposal");
    private static final List<String> TESTS = List.of("initial", "follow-up");
    private static final BigDecimal LEAST = new BigDecimal("0.001");
    private static final BigDecimal MOST = BigDecimal.valueOf(5_000);
    private static final BigDecimal LEAST_CHARGE = new BigDecimal("0.1");
    private static final int LONGEST_CYLINDER = 60;
    private static final int LONGEST_KIND = 20;

    Turn first(Draft draft) {
        List<Machine> machines = setting.machines(draft);
        return machines.size() == 1
                ? unit(0, draft)
                : asking().oneOrNone(asking().question("refrigerant-at"), machines.stream().map(setting::name).toList(),
                        place -> place.map(found -> unit(found, draft)).orElseGet(() -> next.apply(draft)));
    }

    private Asking asking() {
        return setting.asking();
    }

    private Turn unit(int place, Draft draft) {
        return asking().oneOf(asking().question("refrigerant-unit").proposing(Optional.of("1")), UNITS, unit -> moved(
                "added", "from", Draft.EMPTY.with("unit", UNITS.get(unit)), added -> moved("recovered", "into", added,
                        gas -> gas.values().size() == 1
                                ? asking().wrong("refrigerant")
                                : kind(setting.machines(draft).get(place), gas,
                                        known -> purpose(known, done -> told(place, draft, done))))));
    }

    /** Which it is, and the full charge, where the machine's plate was never written down. */
    private Turn kind(Machine machine, Draft gas, Function<Draft, Turn> then) {
        return machine.refrigerant().isPresent()
                ? charge(machine, gas, then)
                : asking().textOrNone(asking().question("refrigerant-kind"), LONGEST_KIND,
                        kind -> charge(machine, gas.withAny("kind", kind), then));
    }

    private Turn charge(Machine machine, Draft gas, Function<Draft, Turn> then) {
        return machine.chargeOunces().isPresent()
                ? then.apply(gas)
                : asking().skippable(asking().question("refrigerant-charge", gas.text("unit")),
                        answer -> answer.isEmpty()
                                ? then.apply(gas)
                                : asking().quantity(answer.get(), LEAST_CHARGE, MOST,
                                        charge -> then.apply(gas.with("charge", charge))));
    }

    /** How much, and from or into which cylinder. */
    private Turn moved(String key, String cylinder, Draft gas, Function<Draft, Turn> then) {
        return asking().skippable(asking().question("refrigerant-" + key, gas.text("unit")),
                answer -> answer.isEmpty()
                        ? then.apply(gas)
                        : asking().quantity(answer.get(), LEAST, MOST, amount -> asking().textOrNone(
                                asking().question("refrigerant-" + cylinder), LONGEST_CYLINDER,
                                name -> then.apply(gas.with(key, amount).withAny(cylinder, name)))));
    }

    private Turn purpose(Draft gas, Function<Draft, Turn> then) {
        return asking().oneOf(asking().question("refrigerant-purpose").proposing(Optional.of("1")),
                words("page.entry.purpose.", PURPOSES),
                purpose -> note("leak", gas.with("purpose", PURPOSES.get(purpose)), (leaked, leak) -> leak
                        ? note("repair", leaked, (repaired, repair) -> repair
                                ? tested(repaired, then)
                                : then.apply(repaired))
                        : then.apply(leaked)));
    }

    /** @param then is also told whether there was anything to note */
    private Turn note(String key, Draft gas, BiFunction<Draft, Boolean, Turn> then) {
        return asking().noteOrNone(asking().question("refrigerant-" + key),
                note -> then.apply(gas.withAny(key, note), note.isPresent()));
    }

    private Turn tested(Draft gas, Function<Draft, Turn> then) {
        return asking().oneOrNone(asking().question("refrigerant-test"), words("page.entry.when.", TESTS),
                when -> when.isEmpty()
                        ? then.apply(gas)
                        : asking().oneOf(asking().question("refrigerant-tight"),
                                words("page.entry.tight.", List.of("yes", "no")),
                                tight -> asking().textOrNone(asking().question("refrigerant-how"),
                                        how -> then.apply(gas.with("test", Draft.EMPTY
                                                .with("when", TESTS.get(when.get())).with("tight", tight == 0)
                                                .withAny("how", how))))));
    }

    private Turn told(int place, Draft draft, Draft gas) {
        List<String> people = draft.texts("people", "name").stream().distinct().toList();
        return asking().oneOrNone(asking().question("refrigerant-technician").proposing(
                people.size() == 1 ? Optional.of("1") : Optional.empty()), people, who -> {
                    Draft done = draft.withRow(MACHINES, place, draft.row(MACHINES, place).with("refrigerant",
                            gas.withAny("technician", who.map(people::get))));
                    return setting.machines(draft).size() == 1 ? next.apply(done) : first(done);
                });
    }

    private List<String> words(String key, List<String> values) {
        return values.stream().map(value -> setting.sentences().word(key + value)).toList();
    }
}
