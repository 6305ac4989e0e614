package icequill.office.asking;

import icequill.explain.ConstantKey;
import icequill.work.Outcome;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Who bears the visit, all of it: nobody but the customer, unless it is said. */
record OutcomeQuestion(Asking asking, Function<Draft, Turn> next) {

    private static final List<Outcome> OUTCOMES = Stream.of(Outcome.values()).filter(Outcome::isDone).toList();

    Turn.Ask first(Draft draft) {
        return asking.oneOf(asking.question("outcome").proposing("1"),
                OUTCOMES.stream().map(each -> asking.sentences().word("outcome." + ConstantKey.of(each))).toList(),
                place -> next.apply(OUTCOMES.get(place) == Outcome.CHARGED
                        ? draft
                        : draft.with(Draft.OUTCOME, ConstantKey.of(OUTCOMES.get(place)))));
    }
}
