package icequill.files.pricing;

import icequill.agreement.CatchUp;
import icequill.agreement.FilterRule;
import icequill.agreement.FlatPrices;
import icequill.agreement.IncludedCalls;
import icequill.agreement.IntervalRules;
import icequill.agreement.Plans;
import icequill.agreement.QuantityDiscounts;
import icequill.agreement.Scope;
import icequill.agreement.Slot;
import icequill.agreement.Tier;
import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.files.yaml.Tree;
import icequill.money.Percent;
import icequill.party.Machine;
import icequill.party.Wording;
import icequill.problem.Code;
import icequill.problem.Problem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Makes the maintenance plans from a file of kind tiers. */
final class TiersReader {

    private static final int MOST = 100;

    private final Fields fields;
    private final CurrencyUnit currency;
    private final Known known;
    private final List<Scope> scopes;
    private final List<Exclusion> exclusions;

    /**
     * What the other files name, also entries with faults of their own. A set is empty when none of its kind could be read, and
     * then what refers to it goes unchecked.
     */
    record Known(Set<String> bands, Set<String> materials, Set<String> tasks) {}

    private record Exclusion(String id, Wording text) {}

    TiersReader(Fields fields, CurrencyUnit currency, Known known) {
        this.fields = fields;
        this.currency = currency;
        this.known = known;
        this.scopes = Names.list(fields.children("scopes"), this::scope);
        this.exclusions = Names.list(fields.children("exclusions"),
                (id, entry) -> entry.wording("text").map(text -> new Exclusion(id, text)));
    }

    Plans read() {
        return new Plans(scopes, Names.list(fields.children("tiers"), this::tier),
                Names.list(fields.children("catchUp"), this::catchUp),
                fields.child("filters").flatMap(this::filters), fields.child("flat").map(this::flat)
                        .orElse(FlatPrices.NONE),
                fields.child("interval").map(TiersReader::interval)
                        .orElseGet(() -> new IntervalRules(BigDecimal.ZERO, 0, 0, 0)));
    }

    private FlatPrices flat(Fields entry) {
        List<FlatPrices.Row> rows = entry.children("machines").stream().flatMap(row -> flatRow(row).stream()).toList();
        for (int i = 0; i < rows.size(); i++) {
            FlatPrices.Row row = rows.get(i);
            if (rows.subList(0, i).stream().anyMatch(other -> other.scope().equals(row.scope())
                    && other.make() == row.make() && other.upTo().compareTo(row.upTo()) == 0)) {
                entry.problems().add(Code.DUPLICATE_NAME, row.place(),
                        "a second price for the same scope, make and size", "one for each");
            }
        }
        return new FlatPrices(rows, entry.percent("further", MOST).orElse(Percent.ZERO));
    }

    private Optional<FlatPrices.Row> flatRow(Fields entry) {
        Names.refer(entry, "scope", "scope", fields.ids("scopes"));
        return entry.id("scope").flatMap(scope -> entry.constant("make", Machine.Make.class)
                .flatMap(make -> entry.number("upTo").flatMap(upTo -> Prices.charged(entry, "price", currency)
                        .map(price -> new FlatPrices.Row(scope, make, upTo, price, entry.place("price"))))));
    }

    private static IntervalRules interval(Fields entry) {
        Optional<Fields> hard = entry.child("hardWater");
        return new IntervalRules(hard.flatMap(water -> water.number("from")).orElse(BigDecimal.ZERO),
                hard.flatMap(water -> water.integer("months")).orElse(0), entry.integer("heat").orElse(0),
                entry.integer("grease").orElse(0));
    }

    private Optional<FilterRule> filters(Fields entry) {
        Names.refer(entry, "material", "material", known.materials());
        Names.refer(entry, "task", "task", known.tasks());
        return entry.id("material").flatMap(material -> entry.integer("months")
                .filter(months -> months >= 1 && months <= 12)
                .map(months -> new FilterRule(material, entry.id("task"), months, entry.place("material"))));
    }

    private Optional<CatchUp> catchUp(String id, Fields entry) {
        return entry.wording("name").map(name -> new CatchUp(id, name, tasks(entry), entry.place("id")));
    }

    private List<String> tasks(Fields entry) {
        entry.leaves("tasks").forEach(leaf -> {
            if (!known.tasks().isEmpty() && !known.tasks().contains(leaf.text())) {
                entry.problems().add(Problem.unknownName(leaf.place(), "task", leaf.text(), known.tasks()));
            }
        });
        return entry.leaves("tasks").stream().map(Tree.Leaf::text).toList();
    }

    private Optional<Scope> scope(String id, Fields entry) {
        List<String> tasks = tasks(entry);
        Optional<Scope.Kind> kind = entry.constant("kind", Scope.Kind.class);
        return kind.flatMap(
                found -> entry.wording("name").map(name -> new Scope(id, name, found, tasks, entry.place("tasks"))));
    }

    private Optional<Tier> tier(String id, Fields entry) {
        List<Fields> named = entry.children("slots");
        List<Slot> slots = named.stream().flatMap(slot -> slot(slot).stream()).toList();
        if (!named.isEmpty() && !Tier.fitsIntoAYear(named.size())) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place("slots"),
                    named.size() + " slots are not whole months apart in a year", "1, 2, 3, 4, 6 or 12 slots");
        }
        Map<String, Integer> response = Prices.byBand(entry, "response", known.bands(), "response",
                (hours, band) -> hours.integer(band));
        Optional<MonetaryAmount> step = Prices.charged(entry, "priceStep", currency)
                .filter(MonetaryAmount::isPositive);
        List<Wording> excluded = excluded(entry);
        Optional<IncludedCalls> included = entry.child("includedCalls").flatMap(TiersReader::included);
        if (step.isEmpty() || slots.size() != named.size() || !Tier.fitsIntoAYear(slots.size())) {
            return Optional.empty();
        }
        return entry.wording("name").map(name -> new Tier(id, name, slots, excluded, response,
                included.orElse(IncludedCalls.NONE), entry.percent("discount", MOST).orElse(Percent.ZERO),
                quantity(entry),
                Prices.byClass(entry, "callDiscounts"), step.get(),
                entry.percent("renewalCap", MOST).orElse(Percent.ZERO),
                entry.place("id")));
    }

    private static Optional<QuantityDiscounts> quantity(Fields entry) {
        List<QuantityDiscounts.Row> rows = new ArrayList<>();
        rows.addAll(quantity(entry, "machineDiscount", QuantityDiscounts.Counted.MACHINES));
        rows.addAll(quantity(entry, "siteDiscount", QuantityDiscounts.Counted.SITES));
        return rows.isEmpty() ? Optional.empty() : Optional.of(new QuantityDiscounts(rows));
    }

    /** More of it is never less off. */
    private static List<QuantityDiscounts.Row> quantity(Fields entry, String key, QuantityDiscounts.Counted counted) {
        List<QuantityDiscounts.Row> rows = new ArrayList<>();
        for (Fields step : entry.children(key)) {
            step.integer("from").filter(from -> from > 1)
                    .flatMap(from -> step.percent("percent", MOST)
                            .map(percent -> new QuantityDiscounts.Row(counted, from, percent)))
                    .ifPresent(row -> {
                        if (!rows.isEmpty() && (row.from() <= rows.getLast().from()
                                || row.percent().value().compareTo(rows.getLast().percent().value()) <= 0)) {
                            step.problems().add(Code.WRONG_ORDER, step.place("from"),
                                    "from " + row.from() + ", " + row.percent().value()
                                            + " % does not go on from the step before it",
                                    "steps by rising number, each with a higher percentage");
                        } else {
                            rows.add(row);
                        }
                    });
        }
        return rows;
    }

    private Optional<Slot> slot(Fields entry) {
        Names.refer(entry, "scope", "scope", fields.ids("scopes"));
        Optional<String> id = entry.id("scope");
        Optional<Scope> scope = scopes.stream().filter(found -> id.filter(found.id()::equals).isPresent()).findFirst();
        return scope.flatMap(found -> entry.wording("name").map(name -> new Slot(name, found)));
    }

    private List<Wording> excluded(Fields entry) {
        Set<String> ids = fields.ids("exclusions");
        List<Tree.Leaf> named = entry.leaves("exclusions");
        named.stream().filter(leaf -> !ids.contains(leaf.text())).forEach(leaf -> entry.problems()
                .add(Problem.unknownName(leaf.place(), "exclusion", leaf.text(), ids)));
        return named.stream().flatMap(leaf -> exclusions.stream()
                .filter(exclusion -> exclusion.id().equals(leaf.text())).map(Exclusion::text)).toList();
    }

    private static Optional<IncludedCalls> included(Fields entry) {
        return entry.integer("number").filter(number -> number >= 0)
                .map(number -> new IncludedCalls(number, entry.percent("loading", MOST).orElse(Percent.ZERO)));
    }
}
