package icequill.office.asking;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;

/** Who asked for the visit, if anybody did, and by which order. */
record CallQuestions(Setting setting, Function<Draft, Turn> next) {

    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);

    Turn first(Draft draft) {
        return asking().textOrNone(asking().question("by"), by -> by.isEmpty() ? order(draft) : at(by.get(), draft));
    }

    private Asking asking() {
        return setting.asking();
    }

    private Turn at(String by, Draft draft) {
        return asking().needed(asking().question("at", by), answer -> Moment.read(setting, answer, setting.day(),
                at -> isBeforeAllLeft(at, draft)
                        ? symptom(by, at, draft)
                        : asking().wrong("at", answer)));
    }

    /** Forms write times so that they sort by their texts. */
    private static boolean isBeforeAllLeft(Moment at, Draft draft) {
        return draft.texts("people", "left").stream().max(Comparator.naturalOrder())
                .filter(left -> at.text().compareTo(left) >= 0).isEmpty();
    }

    private Turn symptom(String by, Moment at, Draft draft) {
        return asking().note(asking().question("symptom", by),
                symptom -> order(draft.with("asked", Draft.EMPTY.with("by", by).with("at", at.text())
                        .with("symptom", symptom))));
    }

    private Turn order(Draft draft) {
        return asking().textOrNone(asking().question("purchase-order"),
                order -> order.isEmpty() ? next.apply(draft) : limit(order.get(), draft));
    }

    private Turn limit(String order, Draft draft) {
        return asking().skippable(asking().question("limit", order), answer -> answer.isEmpty()
                ? next.apply(ordered(order, Optional.empty(), draft))
                : asking().quantity(answer.get(), BigDecimal.ZERO, MOST,
                        limit -> next.apply(ordered(order, Optional.of(limit), draft))));
    }

    private static Draft ordered(String order, Optional<BigDecimal> limit, Draft draft) {
        return draft.with("order", Draft.EMPTY.with("purchaseOrder", order).withAny("limit", limit));
    }
}
