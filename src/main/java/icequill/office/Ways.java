package icequill.office;

import icequill.agreement.Tier;
import icequill.document.WayOfCare;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.money.Amounts;
import icequill.money.Rounding;
import icequill.party.Wording;
import icequill.pricer.PricedSlot;
import icequill.problem.Checked;
import icequill.problem.Problems;
import icequill.rates.ForecastRates;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * Lays all ways of having a site's machines looked after side by side.
 *
 * @param interval months between full cleanings of one more way; empty for none
 */
record Ways(PlanInHand hand, ForecastRates rates, LocalDate day, Optional<Integer> interval) {

    static final String PAY_PER_CALL = "payPerCall";
    private static final String BOOKED_SINGLY = "bookedSingly";
    private static final int YEAR = 12;

    /** Paying per call first, then the same cleanings booked singly, then each plan, then the interval asked for. */
    Checked<List<Way>> all() {
        Problems problems = new Problems();
        ExpectedCharges prices = new ExpectedCharges(hand.setting().shop(), hand.setting().site(),
                hand.setting().rates(), rates, day);
        Optional<ExpectedCharges.Charges> list = problems.take(prices.charges(Optional.empty()));
        List<Way> ways = new ArrayList<>();
        list.ifPresent(charges -> {
            PricedPlan yardstick = hand.choices().yardstick();
            ways.add(new Way(PAY_PER_CALL, WayOfCare.PAY_PER_CALL, Optional.empty(), Amounts.zero(currency()),
                    Optional.empty(), Optional.empty(), charges, Optional.empty()));
            ways.add(planned(BOOKED_SINGLY, WayOfCare.BOOKED_SINGLY, yardstick, yardstick.year().list(), charges));
        });
        for (PricedPlan plan : hand.plans()) {
            problems.take(prices.charges(Optional.of(plan.tier()))).ifPresent(charges -> ways
                    .add(planned(key(plan.tier().id()), WayOfCare.AGREEMENT, plan, plan.year().price(), charges)));
        }
        list.ifPresent(charges -> interval.ifPresent(months -> ways.add(every(months, charges))));
        return problems.or(() -> ways);
    }

    private Way planned(String key, WayOfCare kind, PricedPlan plan, MonetaryAmount price,
            ExpectedCharges.Charges charges) {
        Tier tier = plan.tier();
        return new Way(key, kind, Optional.of(tier.name()), price, tier.monthsBetweenFullCleans(),
                tier.monthsBetween(scope -> scope.tasks().containsAll(rates.calls().condenser().resets())), charges,
                Optional.of(plan));
    }

    /** Full cleanings ordered every so many months, each at the mean price of those of the plan that is the yardstick. */
    Way every(int months, ExpectedCharges.Charges charges) {
        return new Way("every" + months + "Months", WayOfCare.INTERVAL,
                Optional.of(Wording.same(String.valueOf(months))), price(months), Optional.of(months),
                Optional.of(months), charges, Optional.of(hand.choices().yardstick()));
    }

    private MonetaryAmount price(int months) {
        return Explanation.of(oneCleaning().times(Figure.term(YEAR, "")).over(Figure.term(months, ""))
                .rounded(Rounding.LINE, currency())).amount(currency());
    }

    /** The mean list price of a full cleaning in a year of the yardstick, rounded once. */
    MonetaryAmount cleaning() {
        return Explanation.of(oneCleaning().rounded(Rounding.LINE, currency())).amount(currency());
    }

    private Figure oneCleaning() {
        List<PricedSlot> full = hand.choices().yardstick().year().slots().stream()
                .filter(slot -> slot.visit().slot().scope().isFullClean()).toList();
        Figure sum = Figure.price(
                Amounts.sum(full.stream().map(slot -> slot.priced().net()).toList(), currency()), "");
        return full.isEmpty() ? sum : sum.over(Figure.term(full.size(), ""));
    }

    private CurrencyUnit currency() {
        return hand.setting().rates().currency();
    }

    /** A tier's id as programs write names: {@code once-a-year} as {@code onceAYear}. */
    private static String key(String id) {
        return Pattern.compile("-+([a-z0-9])").matcher(id).replaceAll(match -> match.group(1).toUpperCase(Locale.ROOT));
    }
}
