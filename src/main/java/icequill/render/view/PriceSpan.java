package icequill.render.view;

import icequill.agreement.Billing;
import icequill.agreement.Term;
import icequill.explain.ConstantKey;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a plan's price is for, in words: a year, or a term of less; and its payments. */
record PriceSpan(Term term) {

    private static final int YEAR = 12;

    /** The words for the price of a year, or those for the price of a term. */
    String key(String ofYear) {
        return isShort() ? ofYear + "-term" : ofYear;
    }

    private boolean isShort() {
        return term.months() < YEAR;
    }

    /** The last part of a key; a term of less than a year is paid once where years are paid yearly. */
    String billing(Optional<Billing> billing) {
        return isShort() && billing.filter(Billing.YEARLY::equals).isPresent()
                ? "once"
                : billing.map(ConstantKey::of).orElse("per-visit");
    }

    /** Amounts that are alike are counted: "4 × 171.25". */
    static String counted(List<String> amounts) {
        Map<String, Integer> counted = new LinkedHashMap<>();
        amounts.forEach(amount -> counted.merge(amount, 1, Integer::sum));
        return counted.entrySet().stream().map(entry -> entry.getValue() + "\u00a0×\u00a0" + entry.getKey())
                .collect(Collectors.joining(" + "));
    }
}
