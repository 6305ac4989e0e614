package icequill.outlook;

import icequill.document.ComparisonSheet;
import icequill.document.Where;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.party.Site;
import icequill.plans.PlanContext;
import icequill.plans.PricedPlan;
import icequill.plans.TypicalCall;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.CallHistory;
import icequill.request.PaperOptions;
import icequill.work.Band;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;

/**
 * Puts a comparison of plans with calls together.
 *
 * @param forecast empty where the shop has nothing to forecast by
 */
public record ComparisonAssembly(PlanContext hand, Optional<SiteForecast> forecast) {

    /** Rows of calls beyond the last break-even, so that the reader sees it pass. */
    private static final int BEYOND = 1;
    private static final int FEWEST_ROWS = 4;
    private static final int MOST_ROWS = 12;

    /** The sheet, or what is missing for it. */
    public Validated<ComparisonSheet> sheet(PaperOptions options) {
        Band band = hand.setting().rates().labor().bands().getFirst();
        Optional<TypicalCall> typical = hand.request().calls().map(calls -> new TypicalCall(hand.setting(), calls));
        if (forecast.isPresent()) {
            Problems problems = new Problems();
            typical.ifPresent(call -> problems.take(call.known()));
            return problems.or(() -> sheet(options, band, List.of(), forecast.get().meanCall()));
        }
        if (typical.isEmpty()) {
            return Validated.invalid(new Problem(Code.MISSING, hand.request().scope().place(),
                    "\"calls\" is missing", "what a typical call takes: calls: {minutes: ..., on: repair}"));
        }
        return typical.get().price(options.date())
                .map(call -> sheet(options, band, call.lines().stream()
                        .map(line -> new ComparisonSheet.CallLine(line.text(), line.net(), line.how())).toList(),
                        call.net()));
    }

    private ComparisonSheet sheet(PaperOptions options, Band band, List<ComparisonSheet.CallLine> lines,
            MonetaryAmount call) {
        Site site = hand.setting().site();
        List<ComparisonSheet.Plan> plans = hand.plans().stream().map(plan -> plan(plan, call)).toList();
        return new ComparisonSheet(options.date(), hand.setting().shop(), hand.language(options.language()),
                hand.setting().shop().paper(), site.customer().name(), Where.of(site), site.machines(), band, lines,
                call, hand.request().calls().flatMap(CallHistory::lastYear), plans, sums(call, plans),
                List.of(Phrase.of("compare.not-promised"), Phrase.of("compare.still-calls"),
                        Phrase.of("compare.hygiene"), Phrase.of("compare.energy"), Phrase.of("compare.before-tax")),
                forecast.map(found -> new OutlookAssembly(found).outlook()));
    }

    private static ComparisonSheet.Plan plan(PricedPlan plan, MonetaryAmount call) {
        MonetaryAmount price = plan.year().price();
        int fullCleans = (int) plan.year().slots().stream()
                .filter(slot -> slot.visit().slot().scope().isFullClean()).count();
        return new ComparisonSheet.Plan(plan.tier().name(), fullCleans, plan.year().slots().size(), price,
                plan.year().list(), BreakEven.calls(price, call), Explanation.of(BreakEven.quotient(price, call)));
    }

    private static List<ComparisonSheet.Sum> sums(MonetaryAmount call, List<ComparisonSheet.Plan> plans) {
        int last = plans.stream().flatMap(plan -> plan.breakEven().stream()).mapToInt(n -> n + BEYOND).max().orElse(0);
        return IntStream.rangeClosed(1, Math.clamp(last, FEWEST_ROWS, MOST_ROWS)).mapToObj(calls -> {
            Explanation how = Explanation.of(Figure.term(calls, "").times(Figure.price(call, "")));
            return new ComparisonSheet.Sum(calls, how.amount(call.getCurrency()), how);
        }).toList();
    }
}
