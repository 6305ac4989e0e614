package icequill.shop;

import icequill.agreement.Invoiced;
import icequill.agreement.Tier;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.forecast.inputs.SiteHistory;
import icequill.plans.AgreementState;
import icequill.plans.PlanSetting;
import icequill.plans.ReserveAhead;
import icequill.plans.TierPricing;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.AgreementRequest;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads agreements with their sites and rates, and prices them.
 *
 * @param invoiced which of its payments the book has invoiced
 */
public record AgreementLoader(ShopFolder folder, Function<AgreementRequest, Validated<Invoiced>> invoiced) {

    /**
     * Reads and prices an agreement; one report holds all that is wrong with it and with the rates.
     *
     * @param day whose tax rules hold
     */
    public Validated<AgreementState> of(FormName name, LocalDate day) {
        Problems problems = new Problems();
        Optional<AgreementState> hand = folder.form(name, List.of(FormKind.AGREEMENT))
                .flatMap(form -> read(form, day, problems));
        return GlyphCheck.report(folder, problems).or(hand::orElseThrow);
    }

    /** The agreement as far as it could be worked out; empty where something is missing, which was reported. */
    public Optional<AgreementState> read(Form form, LocalDate day, Problems problems) {
        Optional<AgreementRequest> request = folder.agreement(form);
        Optional<PlanSetting> setting = request
                .flatMap(found -> new PlanLoader(folder).setting(found.scope(), found.priced(), day, problems));
        Optional<Tier> tier = setting.flatMap(found -> problems.take(found.rates().tier(request.orElseThrow().tier())));
        if (tier.isEmpty() || !folder.problems().isEmpty()) {
            return Optional.empty();
        }
        LocalDate priced = request.orElseThrow().priced();
        TierPricing pricing = new TierPricing(folder.forecast(priced)
                .map(rates -> new ReserveAhead(rates, SiteHistory.UNKNOWN, Optional.empty(), priced)));
        return problems.take(AgreementState.of(setting.orElseThrow(), request.orElseThrow(), tier.get(), pricing,
                invoiced, day));
    }
}
