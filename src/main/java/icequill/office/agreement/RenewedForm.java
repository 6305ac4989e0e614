package icequill.office.agreement;

import icequill.agreement.RenewalPrice;
import icequill.agreement.RenewalTerms;
import icequill.files.form.Form;
import icequill.files.yaml.Tree;
import icequill.files.yaml.Tree.Leaf;
import icequill.plans.AgreementAtSite;
import icequill.plans.WholeAgreement;
import icequill.request.AgreementRequest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What an agreement goes on as: the old one for its next term, with the machines of its last day, at the price of the renewal.
 *
 * @param old the form that goes on
 * @param prices of a year at each site that stays
 * @param number of the new one
 * @param day on which it is renewed, by whose rates later changes are priced
 */
record RenewedForm(Form old, WholeAgreement hand, List<RenewalPrice> prices, String number, LocalDate day) {

    Form form() {
        AgreementRequest request = hand.request();
        FollowingForm next = new FollowingForm(old, hand, number, "renewal of " + request.number(), day);
        RenewalTerms terms = request.renewal().terms();
        Map<String, Tree> said = new LinkedHashMap<>();
        said.put("priced", Leaf.written(day));
        said.put("start", Leaf.written(terms.next().start()));
        said.put("months", Leaf.counted(terms.next().months()));
        withoutIndex(said);
        List<AgreementAtSite> sites = hand.sites().stream().filter(AgreementAtSite::isInAtTheEnd).toList();
        List<FollowingForm.Staying> staying = new ArrayList<>();
        for (int i = 0; i < sites.size(); i++) {
            staying.add(new FollowingForm.Staying(sites.get(i), next.own(sites.get(i),
                    request.scope().term().lastDay(), prices.get(i).price())));
        }
        return next.form(said, request.orders().on(LocalDate.MAX), staying);
    }

    /** The levels of an index are those of one year. */
    private void withoutIndex(Map<String, Tree> said) {
        if (((Tree.Branch) old.tree()).entries().get("renewal") instanceof Tree.Branch renewal
                && renewal.entries().get("raise") instanceof Tree.Branch raise
                && raise.entries().containsKey("index")) {
            Map<String, Tree> without = new LinkedHashMap<>(renewal.entries());
            without.remove("raise");
            said.put("renewal", Tree.Branch.of(without));
        }
    }
}
