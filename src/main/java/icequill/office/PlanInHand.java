package icequill.office;

import icequill.agreement.CleaningInterval;
import icequill.agreement.Tier;
import icequill.document.CallCharge;
import icequill.document.CatchUpPrice;
import icequill.document.MaintenanceQuote;
import icequill.document.PlanRequest;
import icequill.document.Where;
import icequill.explain.Phrase;
import icequill.files.ShopFolder;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Site;
import icequill.problem.Checked;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.rates.Rates;
import icequill.rates.SiteHistory;
import icequill.work.Visit;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A request for a maintenance quote that was read and priced.
 *
 * @param history of the site, for a forecast
 * @param leftOut tiers that nobody asked for by name and that could not be priced
 */
record PlanInHand(PlanSetting setting, PlanRequest request, List<PricedPlan> plans, SiteHistory history,
        List<Problem> leftOut) {

    /**
     * Reads and prices a request; one report holds all that is wrong with it and with the rates.
     *
     * @param day of the quote, whose rates and tax rules hold
     */
    static Checked<PlanInHand> of(ShopFolder folder, Path file, LocalDate day) {
        Problems problems = new Problems();
        Optional<PlanInHand> hand = read(folder, file, day, problems);
        return VisitInHand.report(folder, problems).or(hand::orElseThrow);
    }

    /** The request as far as it could be worked out; empty where something is missing, which was reported. */
    static Optional<PlanInHand> read(ShopFolder folder, Path file, LocalDate day, Problems problems) {
        Optional<PlanRequest> request = folder.maintenance(file);
        Optional<PlanSetting> setting = request
                .flatMap(found -> PlanSetting.read(folder, found.scope(), day, day, problems));
        if (setting.isEmpty() || !folder.problems().isEmpty()) {
            return Optional.empty();
        }
        SiteHistory history = folder.history(file).orElse(SiteHistory.UNKNOWN);
        TierPricing pricing = new TierPricing(folder.forecast(day)
                .map(rates -> new ReserveAhead(rates, history, request.orElseThrow().survey(), day)));
        List<PricedPlan> plans = new ArrayList<>();
        List<Problem> leftOut = new ArrayList<>();
        for (Tier tier : tiers(setting.get(), request.orElseThrow(), problems)) {
            Checked<PricedPlan> plan = pricing.of(setting.get(), tier);
            if (request.orElseThrow().tiers().isEmpty() && pricing.knowsTooLittleOf(setting.get(), tier)) {
                leftOut.addAll(plan.problems());
            } else {
                problems.take(plan).ifPresent(plans::add);
            }
        }
        if (plans.isEmpty()) {
            leftOut.forEach(problems::add);
        }
        return problems.isEmpty()
                ? Optional.of(new PlanInHand(setting.get(), request.orElseThrow(), plans, history, leftOut))
                : Optional.empty();
    }

    private static List<Tier> tiers(PlanSetting setting, PlanRequest request, Problems problems) {
        List<Tier> all = setting.rates().plans().tiers();
        if (request.tiers().isEmpty()) {
            return all;
        }
        return request.tiers().stream().flatMap(named -> tier(setting, named, problems).stream()).toList();
    }

    /** The tier of a name; an unknown one is reported. */
    static Optional<Tier> tier(PlanSetting setting, Visit.Named named, Problems problems) {
        return tier(setting.rates(), named, problems);
    }

    static Optional<Tier> tier(Rates rates, Visit.Named named, Problems problems) {
        Optional<Tier> tier = rates.plans().tier(named.id());
        if (tier.isEmpty()) {
            problems.add(Problem.unknownName(named.place(), "tier", named.id(),
                    rates.plans().tiers().stream().map(Tier::id).toList()));
        }
        return tier;
    }

    PlanChoices choices() {
        Site site = setting.site();
        return new PlanChoices(plans,
                CleaningInterval.of(site.kind(), site.conditions(), setting.rates().plans().interval()));
    }

    Language language(Optional<Language> wanted) {
        return wanted.or(() -> setting.site().customer().language()).orElse(setting.shop().language());
    }

    /** The quote, or what cannot be priced. */
    Checked<MaintenanceQuote> quote(PaperOptions options, BillTo billTo) {
        Checked<Optional<CatchUpPrice>> catchUp = request.survey()
                .map(survey -> new CatchUpAssembly(choices().yardstick(), survey).price().map(Optional::of))
                .orElseGet(() -> Checked.sound(Optional.empty()));
        return catchUp.then(caughtUp -> new CallCharges(setting, options.date()).all()
                .map(calls -> quote(options, billTo, calls, caughtUp)));
    }

    private MaintenanceQuote quote(PaperOptions options, BillTo billTo, List<CallCharge> calls,
            Optional<CatchUpPrice> catchUp) {
        PlanChoices choices = choices();
        Site site = setting.site();
        return new MaintenanceQuote(options.number(), options.date(), options.date().plusDays(request.holdsDays()),
                setting.shop(), language(options.language()), setting.shop().paper(), billTo,
                site.customer().vendorNumber(), Where.of(site), site.machines(), request.scope().term(),
                request.scope().billing(), choices.interval(), choices.all(), calls,
                plans.stream().map(plan -> new PlanYearAssembly(plan).year()).toList(), catchUp,
                request.customerEmptiesBin(), remarks());
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
