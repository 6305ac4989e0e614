package icequill.office.agreement;

import icequill.files.form.AgreementReader;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.yaml.Tree;
import icequill.files.yaml.Tree.Leaf;
import icequill.money.Amounts;
import icequill.party.Site;
import icequill.plans.AgreementAtSite;
import icequill.plans.WholeAgreement;
import icequill.problem.Place;
import icequill.shop.EntryId;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * An agreement that follows another one, as the form that somebody would have written.
 *
 * @param old the form of that
 * @param number of the new one
 * @param from where it comes from, as in "renewal of A-2025-004"
 * @param accepted on which day
 */
record FollowingForm(Form old, WholeAgreement hand, String number, String from, LocalDate accepted) {

    /** What belongs to the old one alone. */
    private static final Set<String> OLD = Set.of("id", "form", "changes", "accepted", "agreed", "machines", "minutes",
            "rest", "purchaseOrder");

    /** A site that goes on, with what is said of it anew. */
    record Staying(AgreementAtSite site, Map<String, Tree> own) {}

    /**
     * The form.
     *
     * @param terms what is said anew of the whole
     * @param order that stands for all that it bills
     * @param staying at least one
     */
    Form form(Map<String, Tree> terms, Optional<String> order, List<Staying> staying) {
        Map<String, Tree> entries = kept((Tree.Branch) old.tree());
        AgreementReader.SITE_KEYS.forEach(entries::remove);
        entries.put("number", Leaf.written(number));
        Map<String, Tree> acceptance = new LinkedHashMap<>();
        acceptance.put("date", Leaf.written(accepted));
        acceptance.put("paper", Leaf.written(from));
        entries.put("accepted", Tree.Branch.of(acceptance));
        order.ifPresent(known -> entries.put("purchaseOrder", Leaf.written(known)));
        entries.putAll(terms);
        if (staying.size() > 1) {
            entries.put(Form.SITES, new Tree.Row(List.copyOf(staying.stream().map(one -> Tree.Branch.of(site(one)))
                    .toList()), Place.NOWHERE));
        } else {
            entries.remove(Form.SITES);
            entries.putAll(site(staying.getFirst()));
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
        return entries;
    }

    private Map<String, Tree> site(Staying one) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        String id = one.site().request().scope().site();
        oldSites().filter(site -> site.get("site") instanceof Leaf leaf && leaf.text().equals(id)).findFirst()
                .ifPresent(site -> AgreementReader.SITE_KEYS.stream().filter(site::containsKey)
                        .filter(key -> !OLD.contains(key)).forEach(key -> entries.put(key, site.get(key))));
        entries.put("site", Leaf.written(id));
        entries.putAll(one.own());
        return entries;
    }

    /** What the old form says of each of its sites, of one alone at its top; one that came in later is in none. */
    private Stream<Map<String, Tree>> oldSites() {
        Map<String, Tree> whole = ((Tree.Branch) old.tree()).entries();
        return whole.get(Form.SITES) instanceof Tree.Row row
                ? row.items().stream().filter(Tree.Branch.class::isInstance)
                        .map(site -> ((Tree.Branch) site).entries())
                : Stream.of(whole);
    }

    /** A site's machines of a day, its minutes where no change made others, and its price of a year. */
    Map<String, Tree> own(AgreementAtSite state, LocalDate day, MonetaryAmount price) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        Site site = state.setting().whole();
        entries.put("machines", new Tree.Row(new ArrayList<>(state.request().machines(site, day).stream()
                .map(Leaf::written).toList()), Place.NOWHERE));
        if (!state.setting().scope().work().minutes().isEmpty()) {
            Map<String, Tree> minutes = new LinkedHashMap<>();
            state.setting().scope().work().minutes().forEach((scope, count) -> minutes.put(scope, Leaf.counted(count)));
            entries.put("minutes", Tree.Branch.of(minutes));
        }
        Map<String, Tree> agreed = new LinkedHashMap<>();
        agreed.put("price", Leaf.counted(Amounts.plain(price)));
        agreed.put("from", Leaf.written(from));
        entries.put("agreed", Tree.Branch.of(agreed));
        return entries;
    }
}
