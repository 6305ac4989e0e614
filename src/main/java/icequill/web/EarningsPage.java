package icequill.web;

import icequill.answer.history.VisitEarnings;
import icequill.explain.ConstantKey;
import icequill.office.care.AskedPeriod;
import icequill.office.care.EarningsOffice;
import icequill.office.care.EarningsOffice.By;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What visits earned, for the owner. */
final class EarningsPage implements Page {

    private static final Map<String, By> WAYS = Arrays.stream(By.values()).collect(Collectors.toMap(ConstantKey::of,
            Function.identity(), (one, other) -> one, LinkedHashMap::new));

    /**
     * What its page shows.
     *
     * @param by a row for each of these
     * @param earned empty where it cannot be told
     */
    public record Shown(List<String> ways, String by, Optional<VisitEarnings> earned, TypedFields typed) {

        public Shown {
            ways = List.copyOf(ways);
        }
    }

    @Override
    public Answer answer(Asked asked) {
        String by = asked.text("by").filter(WAYS::containsKey).orElse(ConstantKey.of(By.VISIT));
        Validated<VisitEarnings> earned = EarningsOffice.of(asked.book()).of(
                Objects.requireNonNull(WAYS.get(by)),
                new AskedPeriod(asked.month(), Optional.empty(), Optional.empty()), asked.text("site"));
        return Answer.Shown.orProblems("earned",
                new Shown(List.copyOf(WAYS.keySet()), by, earned.found(),
                        new TypedFields(asked.fields(), earned.problems())),
                earned);
    }
}
