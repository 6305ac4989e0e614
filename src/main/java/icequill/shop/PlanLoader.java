package icequill.shop;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.forecast.inputs.SiteHistory;
import icequill.forecast.inputs.SiteVisits;
import icequill.outlook.SideWork;
import icequill.outlook.SiteRecords;
import icequill.party.Site;
import icequill.plans.PlanContext;
import icequill.plans.PlanSetting;
import icequill.plans.ReserveAhead;
import icequill.plans.TierPricing;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.request.PlanRequest;
import icequill.request.PlanScope;
import icequill.tax.TaxPlace;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Reads requests for maintenance quotes with their sites and rates, and prices them. */
public record PlanLoader(ShopFolder folder) {

    /**
     * Reads and prices a request; one report holds all that is wrong with it and with the rates.
     *
     * @param day of the quote, whose rates and tax rules hold
     */
    public Validated<PlanContext> of(FormName name, LocalDate day) {
        Problems problems = new Problems();
        Optional<PlanContext> hand = folder.form(name, List.of(FormKind.MAINTENANCE_REQUEST))
                .flatMap(form -> read(form, day, problems));
        return GlyphCheck.report(folder, problems).or(hand::orElseThrow);
    }

    /** The request as far as it could be worked out; empty where something is missing, which was reported. */
    public Optional<PlanContext> read(Form form, LocalDate day, Problems problems) {
        Optional<PlanRequest> request = folder.contents().maintenance(form);
        Optional<PlanSetting> setting = request.flatMap(found -> setting(found.scope(), day, day, day, problems));
        if (setting.isEmpty() || !folder.problems().isEmpty()) {
            return Optional.empty();
        }
        SiteHistory history = folder.contents().history(form).orElse(SiteHistory.UNKNOWN)
                .with(visits(setting.get().whole(), day));
        TierPricing pricing = new TierPricing(folder.forecast(day)
                .map(rates -> new ReserveAhead(rates, history, request.orElseThrow().survey(), day)));
        Optional<PlanContext> hand = problems
                .take(PlanContext.of(setting.get(), request.orElseThrow(), history, pricing));
        return hand.filter(priced -> problems.isEmpty());
    }

    /** What the book's own visits say of a site; empty where there were none, or nothing is expected of machines. */
    Optional<SiteVisits> visits(Site site, LocalDate day) {
        return folder.forecast(day).flatMap(rates -> folder.schedule()
                .flatMap(schedule -> new SiteRecords(site, folder.visitsAt(site.id()),
                        new SideWork(rates.at(site.kind()), schedule), day).known()));
    }

    /**
     * Reads what a plan is priced by; empty where something is missing, which was reported.
     *
     * @param priced the day whose rates hold
     * @param taxed the day whose tax rules hold
     * @param owned the day of which whoever owned the site is the customer
     * @param problems those are added here that the folder itself cannot know
     */
    Optional<PlanSetting> setting(PlanScope scope, LocalDate priced, LocalDate taxed, LocalDate owned,
            Problems problems) {
        Optional<Site> whole = folder.site(scope.site(), owned, scope.place());
        Optional<Rates> rates = folder.schedule().flatMap(schedule -> problems.take(schedule.asOf(priced, whole)));
        Optional<TaxPlace> place = whole.flatMap(site -> folder.taxPlace(site, taxed, problems));
        List<Problem> unknown = whole.map(site -> PlanSetting.problems(scope, site, rates)).orElse(List.of());
        problems.addAll(unknown);
        return whole.filter(site -> unknown.isEmpty()).flatMap(site -> rates.flatMap(prices -> place
                .map(taxes -> PlanSetting.of(folder.shop().orElseThrow(), site, prices, taxes, scope,
                        folder.timetables()))));
    }
}
