package icequill.files.form;

import icequill.agreement.Billing;
import icequill.agreement.Term;
import icequill.files.pricing.Prices;
import icequill.files.yaml.Fields;
import icequill.party.Shop;
import icequill.pricer.CallReserve;
import icequill.request.PlanScope;
import icequill.request.PlannedWork;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what requests for maintenance quotes and agreements have in common. */
final class PlanScopeReader {

    private static final int YEAR = 12;
    private static final String PER_VISIT = "per-visit";

    private PlanScopeReader() {
    }

    /** Empty when something needed is missing or wrong, which is then reported. */
    static Optional<PlanScope> read(Fields fields, Shop shop) {
        return read(fields, fields, shop);
    }

    /**
     * The same for one of several sites.
     *
     * @param site what is said of it alone
     */
    static Optional<PlanScope> read(Fields fields, Fields site, Shop shop) {
        Optional<LocalDate> start = fields.day("start");
        // Tiers and their prices are by the year: a term is of whole years, or less than one.
        int months = fields.integer("months").filter(found -> found > 0 && (found < YEAR || found % YEAR == 0))
                .orElse(YEAR);
        Optional<Billing> billing = fields.constant("billing", Billing.class);
        boolean billed = billing.isPresent() || fields.text("billing").filter(PER_VISIT::equals).isPresent();
        return site.id("site").filter(named -> billed)
                .flatMap(named -> start.map(first -> new PlanScope(named, names(site, "machines"),
                        new Term(first, months), billing, work(site), site.child("includedCalls")
                                .flatMap(calls -> reserve(calls, shop)),
                        SiteReader.circumstances(site), site.time("arrive"), site.place("site"))));
    }

    /** The ids of a list, each with its place. */
    static List<Visit.Named> names(Fields fields, String key) {
        return fields.leaves(key).stream().map(leaf -> new Visit.Named(leaf.text(), leaf.place())).toList();
    }

    /** Minutes at the site, by the id of the scope. */
    static Map<String, Integer> minutes(Fields fields) {
        Map<String, Integer> minutes = new LinkedHashMap<>();
        fields.child("minutes").ifPresent(byScope -> byScope.entries().keySet()
                .forEach(scope -> byScope.integer(scope).ifPresent(found -> minutes.put(scope, found))));
        return minutes;
    }

    private static PlannedWork work(Fields fields) {
        return new PlannedWork(names(fields, "crew"), minutes(fields), fields.place("minutes"));
    }

    private static Optional<CallReserve> reserve(Fields calls, Shop shop) {
        return calls.number("expected")
                .flatMap(expected -> Prices.amount(calls, "meanCharge", shop.currency())
                        .flatMap(charge -> Prices.amount(calls, "meanCost", shop.currency())
                                .map(cost -> new CallReserve(expected, charge, cost))));
    }
}
