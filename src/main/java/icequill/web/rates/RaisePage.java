package icequill.web.rates;

import icequill.answer.rates.RaisedPrices;
import icequill.files.pricing.PriceGroup;
import icequill.office.care.RaiseOffice;
import icequill.office.care.RaiseWish;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import icequill.web.page.TypedNumber;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Raises prices from a day on; it shows first each price before and after. */
public final class RaisePage implements Page, FormPage {

    /**
     * What its page shows.
     *
     * @param groups of prices that are raised together
     * @param would what would be written; empty before it was asked for
     */
    public record Shown(List<String> groups, Optional<RaisedPrices> would, TypedFields typed) {

        public Shown {
            groups = List.copyOf(groups);
        }
    }

    @Override
    public Answer answer(Asked asked) {
        if (asked.fields().isEmpty()) {
            return new Answer.Shown("rates-raise", new Shown(PriceGroup.keys(), Optional.empty(), TypedFields.NONE),
                    PriceGroup.keys());
        }
        Validated<RaisedPrices> would = raised(asked, false);
        return Answer.Shown.orProblems("rates-raise", shown(asked, would), would);
    }

    @Override
    public Validated<String> done(Asked asked) {
        return raised(asked, true).map(raised -> "/rates?on=" + raised.from());
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        Validated<RaisedPrices> not = new Validated.Invalid<>(problems);
        return Answer.Shown.orProblems("rates-raise", shown(asked, not), not);
    }

    private static Shown shown(Asked asked, Validated<RaisedPrices> would) {
        Map<String, List<String>> fields = new LinkedHashMap<>(asked.fields());
        // What is confirmed later holds from the day that was shown.
        would.found().ifPresent(raised -> fields.put("from", List.of(raised.from().toString())));
        return new Shown(PriceGroup.keys(), would.found(), new TypedFields(fields, would.problems()));
    }

    private static Validated<RaisedPrices> raised(Asked asked, boolean sure) {
        return wish(asked).then(wish -> RaiseOffice.of(asked.book()).raise(wish, sure));
    }

    private static Validated<RaiseWish> wish(Asked asked) {
        Problems problems = new Problems();
        Optional<LocalDate> from = asked.day("from", problems);
        if (asked.text("from").isEmpty()) {
            problems.add(Code.MISSING, new Place("", 0, "from"), "the first day is missing",
                    "the day from which the new prices hold");
        }
        Map<String, String> groups = new LinkedHashMap<>();
        PriceGroup.keys().forEach(group -> by(asked, group, problems).ifPresent(by -> groups.put(group, by)));
        if (groups.isEmpty() && problems.list().isEmpty()) {
            problems.add(Code.MISSING, Place.NOWHERE, "no percentage was typed",
                    "one beside the prices that are to be raised");
        }
        return problems.or(() -> new RaiseWish(from.orElseThrow(), groups));
    }

    private static Optional<String> by(Asked asked, String group, Problems problems) {
        Optional<BigDecimal> percent = asked.text("percent-" + group)
                .flatMap(text -> problems.take(TypedNumber.signed(text, "percent-" + group)));
        Optional<BigDecimal> step = asked.text("step-" + group)
                .flatMap(text -> problems.take(TypedNumber.of(text, "step-" + group)));
        return percent.map(by -> by.toPlainString() + step.map(to -> ":" + to.toPlainString()).orElse(""));
    }
}
