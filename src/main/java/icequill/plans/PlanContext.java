package icequill.plans;

import icequill.agreement.CleaningInterval;
import icequill.agreement.Term;
import icequill.agreement.Tier;
import icequill.document.CallCharge;
import icequill.document.CatchUpPrice;
import icequill.document.MaintenanceQuote;
import icequill.document.MaintenanceQuote.PastCalls;
import icequill.document.Where;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.forecast.inputs.SiteHistory;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.CallHistory;
import icequill.request.PaperOptions;
import icequill.request.PlanRequest;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;

/**
 * A request for a maintenance quote that was read and priced.
 *
 * @param history of the site, for a forecast
 * @param leftOut tiers that nobody asked for by name and that could not be priced
 */
public record PlanContext(PlanSetting setting, PlanRequest request, List<PricedPlan> plans, SiteHistory history,
        List<Problem> leftOut) {

    private static final int YEAR = 12;

    /** The priced request, or what of it cannot be priced. */
    public static Validated<PlanContext> of(PlanSetting setting, PlanRequest request, SiteHistory history,
            TierPricing pricing) {
        Problems problems = new Problems();
        List<PricedPlan> plans = new ArrayList<>();
        List<Problem> leftOut = new ArrayList<>();
        for (Tier tier : tiers(setting, request, problems)) {
            Validated<PricedPlan> plan = pricing.of(setting, tier);
            if (request.tiers().isEmpty() && pricing.knowsTooLittleOf(setting, tier)) {
                leftOut.addAll(plan.problems());
            } else {
                problems.take(plan).ifPresent(plans::add);
            }
        }
        if (plans.isEmpty()) {
            leftOut.forEach(problems::add);
        }
        return problems.or(() -> new PlanContext(setting, request, plans, history, leftOut));
    }

    private static List<Tier> tiers(PlanSetting setting, PlanRequest request, Problems problems) {
        List<Tier> all = setting.rates().plans().tiers();
        if (request.tiers().isEmpty()) {
            return all;
        }
        return request.tiers().stream()
                .flatMap(named -> problems.take(setting.rates().tier(named)).stream()).toList();
    }

    /** Itself, where years can be compared: a term of less than one must leave out no month in which the machines run. */
    public Validated<PlanContext> comparable() {
        Term term = request.scope().term();
        Set<Month> within = IntStream.range(0, term.months()).mapToObj(term.start()::plusMonths)
                .map(LocalDate::getMonth).collect(Collectors.toSet());
        Set<Month> open = setting.site().season();
        return term.months() >= YEAR || (!open.isEmpty() && within.containsAll(open))
                ? Validated.valid(this)
                : Validated.invalid(new Problem(Code.NOT_ALLOWED, request.scope().place(),
                        "a comparison looks at years, and a term of " + term.months()
                                + " months leaves out months in which the machines run",
                        "months: 12, or a site with a season within the term"));
    }

    public PlanChoices choices() {
        Site site = setting.site();
        return new PlanChoices(plans,
                CleaningInterval.of(site.kind(), site.conditions(), setting.rates().plans().interval()));
    }

    public Language language(Optional<Language> wanted) {
        return wanted.or(() -> setting.site().customer().language()).orElse(setting.shop().language());
    }

    /** The quote, or what cannot be priced. */
    public Validated<MaintenanceQuote> quote(PaperOptions options, BillTo billTo) {
        Validated<Optional<CatchUpPrice>> catchUp = request.survey()
                .map(survey -> new CatchUpAssembly(choices().yardstick(), survey).price().map(Optional::of))
                .orElseGet(() -> Validated.valid(Optional.empty()));
        return catchUp.then(caughtUp -> new CallCharges(setting, options.date()).all()
                .then(calls -> lastYear(options.date())
                        .map(past -> quote(options, billTo, calls, caughtUp, past))));
    }

    /** Empty when nobody counted. */
    private Validated<Optional<PastCalls>> lastYear(LocalDate day) {
        Optional<CallHistory> counted = request.calls().filter(calls -> calls.lastYear().isPresent());
        return counted.isEmpty()
                ? Validated.valid(Optional.empty())
                : new TypicalCall(setting, counted.get()).price(day)
                        .map(call -> Optional.of(past(counted.get().lastYear().orElseThrow(), call.net())));
    }

    private static PastCalls past(int calls, MonetaryAmount each) {
        Explanation how = Explanation.of(Figure.term(calls, "").times(Figure.price(each, "")));
        return new PastCalls(calls, each, how.amount(each.getCurrency()), how);
    }

    private MaintenanceQuote quote(PaperOptions options, BillTo billTo, List<CallCharge> calls,
            Optional<CatchUpPrice> catchUp, Optional<PastCalls> lastYear) {
        PlanChoices choices = choices();
        Site site = setting.site();
        return new MaintenanceQuote(options.number(), options.date(), options.date().plusDays(request.holdsDays()),
                setting.shop(), language(options.language()), setting.shop().paper(), billTo,
                site.customer().vendorNumber(), Where.of(site), site.machines(), request.scope().term(),
                request.scope().billing(), choices.interval(), choices.yardstick().tier().name(), choices.all(), calls,
                plans.stream().map(plan -> new PlanYearAssembly(plan).year()).toList(), catchUp,
                lastYear, request.customerEmptiesBin(), request.annex(), remarks());
    }

    /** What is said about taxes and hours, each thing once. */
    private List<Phrase> remarks() {
        List<Phrase> remarks = new ArrayList<>();
        for (PricedPlan plan : plans) {
            InstallmentTax tax = new InstallmentTax(setting);
            plan.firstPayments().forEach(payment -> remarks.addAll(tax.estimated(payment).remarks()));
            plan.year().slots().forEach(slot -> remarks.addAll(slot.remarks()));
        }
        return remarks.stream().distinct().toList();
    }
}
