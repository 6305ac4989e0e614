package icequill.shop;

import icequill.agreement.Invoiced;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.forecast.inputs.SiteHistory;
import icequill.party.Customer;
import icequill.plans.PlanSetting;
import icequill.plans.ReserveAhead;
import icequill.plans.TierPricing;
import icequill.plans.WholeAgreement;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.AgreementRequest;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Reads agreements with their sites and rates, and prices them.
 *
 * @param invoiced which of its payments the book has invoiced
 */
public record AgreementLoader(ShopFolder folder, BiFunction<AgreementRequest, String, Validated<Invoiced>> invoiced) {

    /**
     * Reads and prices an agreement; one report holds all that is wrong with it and with the rates.
     *
     * @param day whose tax rules hold
     */
    public Validated<WholeAgreement> of(FormName name, LocalDate day) {
        Problems problems = new Problems();
        Optional<WholeAgreement> hand = folder.form(name, List.of(FormKind.AGREEMENT))
                .flatMap(form -> read(form, day, problems));
        return GlyphCheck.report(folder, problems).or(hand::orElseThrow);
    }

    /** The agreement as far as it could be worked out; empty where something is missing, which was reported. */
    public Optional<WholeAgreement> read(Form form, LocalDate day, Problems problems) {
        Optional<AgreementRequest> request = folder.agreement(form);
        List<WholeAgreement.Priced> sites = request.stream().flatMap(found -> found.sites().stream())
                .flatMap(site -> priced(site, day, problems).stream()).toList();
        if (request.isEmpty() || sites.size() < request.get().sites().size() || !folder.problems().isEmpty()) {
            return Optional.empty();
        }
        problems.addAll(otherCustomers(sites, request.get().scope().place()));
        return problems.isEmpty()
                ? problems.take(WholeAgreement.of(request.get(), sites, invoiced, day))
                : Optional.empty();
    }

    private Optional<WholeAgreement.Priced> priced(AgreementRequest site, LocalDate day, Problems problems) {
        LocalDate priced = site.priced();
        TierPricing pricing = new TierPricing(folder.forecast(priced)
                .map(rates -> new ReserveAhead(rates, SiteHistory.UNKNOWN, Optional.empty(), priced)));
        return new PlanLoader(folder).setting(site.scope(), priced, day, site.firstDayHere(), problems)
                .flatMap(setting -> problems.take(setting.rates().tier(site.tier()))
                        .map(tier -> new WholeAgreement.Priced(setting, tier, pricing)));
    }

    /** That one number bills one customer by one kind of tax, where it does not. */
    private static List<Problem> otherCustomers(List<WholeAgreement.Priced> sites, Place place) {
        PlanSetting first = sites.getFirst().setting();
        return sites.stream().map(WholeAgreement.Priced::setting)
                .filter(other -> !isSame(other.whole().customer(), first.whole().customer())
                        || other.place().regime() != first.place().regime())
                .map(other -> new Problem(Code.NOT_ALLOWED, place,
                        "sites \"" + first.whole().id() + "\" and \"" + other.whole().id()
                                + "\" have other customers, or another kind of tax",
                        "an agreement for each"))
                .toList();
    }

    /** Wherever each of them is written down. */
    private static boolean isSame(Customer one, Customer other) {
        return one.name().equals(other.name()) && one.vendorNumber().equals(other.vendorNumber())
                && one.paymentDays().equals(other.paymentDays());
    }
}
