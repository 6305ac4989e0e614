package icequill.outlook;

import icequill.document.CareOptionKind;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.forecast.inputs.ForecastRates;
import icequill.money.Amounts;
import icequill.money.Rounding;
import icequill.party.Wording;
import icequill.plans.Calendars;
import icequill.plans.CareOfSides;
import icequill.plans.CatchUpAmounts;
import icequill.plans.CatchUpAssembly;
import icequill.plans.ExpectedCharges;
import icequill.plans.OpenMonths;
import icequill.plans.PlanContext;
import icequill.plans.PricedPlan;
import icequill.pricer.PricedSlot;
import icequill.problem.Problems;
import icequill.problem.Validated;
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
record CareOptions(PlanContext hand, ForecastRates rates, LocalDate day, Optional<Integer> interval) {

    static final String PAY_PER_CALL = "payPerCall";
    private static final String BOOKED_SINGLY = "bookedSingly";

    /** Paying per call first, then the same cleanings booked singly, then each plan, then the interval asked for. */
    Validated<List<CareOption>> all() {
        Problems problems = new Problems();
        ExpectedCharges prices = new ExpectedCharges(hand.setting().shop(), hand.setting().site(),
                hand.setting().rates(), rates, day);
        PricedPlan yardstick = hand.choices().yardstick();
        Optional<ExpectedCharges.Charges> list = problems.take(prices.charges(Optional.empty()));
        Optional<CatchUpAmounts> catchUp = problems.take(catchUp(yardstick));
        List<CareOption> ways = new ArrayList<>();
        list.ifPresent(charges -> {
            ways.add(new CareOption(PAY_PER_CALL, CareOptionKind.PAY_PER_CALL, Optional.empty(),
                    Amounts.zero(currency()),
                    Optional.empty(), CatchUpAmounts.none(currency()), CareOfSides.NONE, charges, 0,
                    Optional.empty()));
            catchUp.ifPresent(extra -> ways.add(planned(BOOKED_SINGLY, CareOptionKind.BOOKED_SINGLY, yardstick,
                    yardstick.year().list(), extra, charges, 0)));
        });
        for (PricedPlan plan : hand.plans()) {
            Optional<ExpectedCharges.Charges> charged = problems.take(prices.charges(Optional.of(plan.tier())));
            Optional<CatchUpAmounts> extra = problems.take(catchUp(plan));
            charged.ifPresent(charges -> extra.ifPresent(more -> ways.add(planned(key(plan.tier().id()),
                    CareOptionKind.AGREEMENT, plan, plan.year().price(), more, charges,
                    plan.tier().included().number()))));
        }
        list.ifPresent(charges -> catchUp.ifPresent(extra -> interval
                .ifPresent(months -> ways.add(every(months, extra, charges)))));
        return problems.or(() -> ways);
    }

    /** What neglected machines add to the first visit of a plan; zero where none was found neglected. */
    private Validated<CatchUpAmounts> catchUp(PricedPlan plan) {
        return hand.request().survey()
                .map(survey -> new CatchUpAssembly(plan, survey).ahead())
                .orElseGet(() -> Validated.valid(CatchUpAmounts.none(currency())));
    }

    private CareOption planned(String key, CareOptionKind kind, PricedPlan plan, MonetaryAmount price,
            CatchUpAmounts catchUp,
            ExpectedCharges.Charges charges, int included) {
        return new CareOption(key, kind, Optional.of(plan.tier().name()), price, Optional.empty(), catchUp,
                CareOfSides.of(plan, rates), charges, included, Optional.of(plan));
    }

    /**
     * Full cleanings ordered every so many months, each at the mean price of those of the plan that is the yardstick; a year costs
     * those that fall into it.
     */
    private CareOption every(int months, CatchUpAmounts catchUp, ExpectedCharges.Charges charges) {
        Calendars calendars = calendars();
        List<MonetaryAmount> years = calendars.inYears(months).stream().map(this::cleanings).toList();
        CareOfSides care = new CareOfSides(Optional.of(months), Optional.of(months),
                calendars.every(months, CareOfSides.part(rates.cleaningRestores())),
                calendars.every(months, CareOfSides.part(rates.brushingRestores())));
        return new CareOption("every" + months + "Months", CareOptionKind.INTERVAL,
                Optional.of(Wording.same(String.valueOf(months))), years.getFirst(),
                Optional.of(years.subList(1, years.size())), catchUp, care, charges, 0,
                Optional.of(hand.choices().yardstick()));
    }

    private Calendars calendars() {
        return new Calendars(new OpenMonths(hand.setting().site().season()), hand.request().scope().term().start());
    }

    private MonetaryAmount cleanings(int number) {
        return Explanation.of(oneCleaning().times(Figure.term(number, "")).rounded(Rounding.LINE, currency()))
                .amount(currency());
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
