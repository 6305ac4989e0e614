package icequill.life.refrigerant;

import icequill.rates.RefrigerantRules;
import icequill.rates.RefrigerantRules.Kind;
import icequill.rates.RefrigerantRules.LeakRule;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the rules on record say of a machine's leaks.
 *
 * @param rule that is about its refrigerant; empty where none is
 * @param limit in percent a year; empty where no rule asks for a rate
 */
public record Verdict(Outcome outcome, Optional<LeakRule> rule, Optional<BigDecimal> limit) {

    /** Whether a rule asks for a leak rate, and how the machine stands by it. */
    public enum Outcome {
        /** The table of refrigerants does not have it, so nobody can say which rule holds. */
        UNKNOWN_KIND,
        /** No rule on record is about it on that day. */
        NO_RULE,
        /** The rule asks only from a larger full charge on. */
        TOO_SMALL,
        /** Nothing was lost, or no more than the limit by either method. */
        WITHIN, ABOVE
    }

    /**
     * Of a machine on a day.
     *
     * @param charge ounces when it is full
     * @param rates what was figured last
     */
    static Verdict of(RefrigerantRules rules, String kind, BigDecimal charge, LocalDate day, List<LeakRate> rates) {
        Optional<Kind> known = rules.kind(kind);
        Optional<LeakRule> found = known
                .flatMap(holds -> rules.leaks().stream().filter(rule -> rule.isAbout(holds, day)).findFirst());
        if (found.isEmpty()) {
            return new Verdict(known.isEmpty() ? Outcome.UNKNOWN_KIND : Outcome.NO_RULE, found, Optional.empty());
        }
        LeakRule rule = found.get();
        if (!rule.asksFor(charge)) {
            return new Verdict(Outcome.TOO_SMALL, found, Optional.empty());
        }
        BigDecimal limit = Objects.requireNonNull(rule.limits().get(rules.category()), rule.id());
        return new Verdict(rates.stream().anyMatch(rate -> rate.isAbove(limit)) ? Outcome.ABOVE : Outcome.WITHIN,
                found, Optional.of(limit));
    }
}
