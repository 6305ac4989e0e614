package icequill.office.agreement;

import icequill.agreement.RenewalPrice;
import icequill.agreement.RenewalTerms;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.yaml.Tree;
import icequill.files.yaml.Tree.Leaf;
import icequill.money.Amounts;
import icequill.party.Site;
import icequill.plans.AgreementAtSite;
import icequill.plans.WholeAgreement;
import icequill.problem.Place;
import icequill.request.AgreementRequest;
import icequill.shop.EntryId;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What an agreement goes on as, as the form that somebody would have written: the old one for its next term, with the machines of its last day,
 * at the price of the renewal.
 *
 * @param old the form that goes on
 * @param prices of a year at each site that stays
 * @param number of the new one
 * @param day on which it is renewed, by whose rates later changes are priced
 */
record RenewedForm(Form old, WholeAgreement hand, List<RenewalPrice> prices, String number, LocalDate day) {

    /** What belongs to the old term alone. */
    private static final Set<String> OLD = Set.of("id", "form", "changes", "accepted", "agreed", "machines", "minutes");

    Form form() {
        Map<String, Tree> entries = kept((Tree.Branch) old.tree());
        AgreementRequest request = hand.request();
        RenewalTerms terms = request.renewal().terms();
        entries.put("number", Leaf.written(number));
        entries.put("priced", Leaf.written(day));
        Map<String, Tree> accepted = new LinkedHashMap<>();
        accepted.put("date", Leaf.written(day));
        accepted.put("paper", named());
        entries.put("accepted", Tree.Branch.of(accepted));
        entries.remove("purchaseOrder");
        request.orders().on(LocalDate.MAX).ifPresent(order -> entries.put("purchaseOrder", Leaf.written(order)));
        entries.put("start", Leaf.written(terms.next().start()));
        entries.put("months", Leaf.counted(terms.next().months()));
        List<AgreementAtSite> staying = hand.sites().stream().filter(AgreementAtSite::isInAtTheEnd).toList();
        if (hand.isOverSeveralSites()) {
            List<Tree> sites = new ArrayList<>();
            for (int i = 0; i < staying.size(); i++) {
                sites.add(site(staying.get(i), prices.get(i)));
            }
            entries.put(Form.SITES, new Tree.Row(sites, Place.NOWHERE));
        } else {
            entries.putAll(own(staying.getFirst(), prices.getFirst()));
        }
        return new Form(Optional.of(FormKind.AGREEMENT), EntryId.of(number), Tree.Branch.of(entries));
    }

    private static Map<String, Tree> kept(Tree.Branch tree) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        tree.entries().forEach((key, value) -> {
            if (!OLD.contains(key)) {
                entries.put(key, value);
            }
        });
        if (entries.get("renewal") instanceof Tree.Branch renewal
                && renewal.entries().get("raise") instanceof Tree.Branch raise
                && raise.entries().containsKey("index")) {
            // The levels of an index are those of one year.
            Map<String, Tree> without = new LinkedHashMap<>(renewal.entries());
            without.remove("raise");
            entries.put("renewal", Tree.Branch.of(without));
        }
        return entries;
    }

    private Tree site(AgreementAtSite state, RenewalPrice price) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        entries.put("site", Leaf.written(state.request().scope().site()));
        oldSites().filter(site -> site.entries().get("site") instanceof Leaf leaf
                && leaf.text().equals(state.request().scope().site())).findFirst()
                .ifPresent(site -> entries.putAll(kept(site)));
        entries.remove("from");
        entries.remove("until");
        entries.putAll(own(state, price));
        return Tree.Branch.of(entries);
    }

    private Stream<Tree.Branch> oldSites() {
        return ((Tree.Branch) old.tree()).entries().get(Form.SITES) instanceof Tree.Row row
                ? row.items().stream().filter(Tree.Branch.class::isInstance).map(Tree.Branch.class::cast)
                : Stream.empty();
    }

    /** Its machines, the minutes where no change made others, and its price. */
    private Map<String, Tree> own(AgreementAtSite state, RenewalPrice price) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        Site site = state.setting().whole();
        Set<String> machines = new LinkedHashSet<>(
                state.request().machines(site, state.request().scope().term().lastDay()));
        entries.put("machines", new Tree.Row(List.copyOf(machines.stream().map(Leaf::written).toList()),
                Place.NOWHERE));
        if (!state.setting().scope().work().minutes().isEmpty()) {
            Map<String, Tree> minutes = new LinkedHashMap<>();
            state.setting().scope().work().minutes().forEach((scope, count) -> minutes.put(scope, Leaf.counted(count)));
            entries.put("minutes", Tree.Branch.of(minutes));
        }
        Map<String, Tree> agreed = new LinkedHashMap<>();
        agreed.put("price", Leaf.counted(Amounts.plain(price.price())));
        agreed.put("from", named());
        entries.put("agreed", Tree.Branch.of(agreed));
        return entries;
    }

    private Leaf named() {
        return Leaf.written("renewal of " + hand.request().number());
    }
}
