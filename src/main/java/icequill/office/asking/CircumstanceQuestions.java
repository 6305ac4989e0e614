package icequill.office.asking;

import icequill.party.Circumstance;
import icequill.party.Machine;
import icequill.rates.Modifier;
import icequill.work.ChargeClass;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** What made the work dearer, such as a roof or a wait: which, how much, and at which machine. */
record CircumstanceQuestions(Setting setting, Function<Draft, Turn> next) {

    private static final BigDecimal LEAST = new BigDecimal("0.001");
    private static final BigDecimal MOST = BigDecimal.valueOf(10_000);

    Turn first(Draft draft) {
        List<Modifier> modifiers = setting.rates().adjustments().modifiers();
        List<Integer> usual = IntStream.range(0, modifiers.size()).filter(i -> usual(modifiers.get(i)).isPresent())
                .boxed().toList();
        return asking().someOf(asking().question("circumstances").proposing(Picks.proposal(usual)),
                Picks.lettered(modifiers.stream().map(this::name).toList()), Picks::letters, "letters",
                places -> each(places.stream().sorted().map(modifiers::get).toList(), draft));
    }

    private Asking asking() {
        return setting.asking();
    }

    /** As the site has it on planned visits. */
    private Optional<Circumstance> usual(Modifier modifier) {
        return setting.site().circumstances().stream().filter(each -> each.modifier().equals(modifier.id()))
                .findFirst();
    }

    private String name(Modifier modifier) {
        return setting.sentences().in(modifier.name());
    }

    private Turn each(List<Modifier> left, Draft draft) {
        return left.isEmpty()
                ? next.apply(draft)
                : amount(left.getFirst(), draft, told -> each(left.subList(1, left.size()), told));
    }

    private Turn amount(Modifier modifier, Draft draft, Function<Draft, Turn> then) {
        boolean minutes = modifier.unit() == Unit.MINUTE;
        Optional<String> usual = usual(modifier).map(each -> each.amount().stripTrailingZeros().toPlainString());
        Question question = asking()
                .question(minutes ? "circumstance-minutes" : "circumstance-times", name(modifier))
                .proposing(minutes ? usual : usual.or(() -> Optional.of("1")));
        return asking().needed(question, answer -> asking().quantity(answer, LEAST, MOST, amount -> at(modifier,
                Draft.EMPTY.with("modifier", modifier.id()).with("amount", amount), draft, then)));
    }

    /** What belongs to the way there belongs to no machine. */
    private Turn at(Modifier modifier, Draft line, Draft draft, Function<Draft, Turn> then) {
        List<Machine> machines = modifier.chargeClass() == ChargeClass.TRAVEL ? List.of() : setting.machines(draft);
        if (machines.size() < 2) {
            return then.apply(added(line, machines.stream().findFirst(), draft));
        }
        return asking().oneOrNone(asking().question("circumstance-at", name(modifier)),
                machines.stream().map(setting::name).toList(),
                place -> then.apply(added(line, place.map(machines::get), draft)));
    }

    private static Draft added(Draft line, Optional<Machine> machine, Draft draft) {
        return draft.adding("lines", line.withAny("machine", machine.map(Machine::id)));
    }
}
