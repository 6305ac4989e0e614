package icequill.files.pricing;

import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.files.yaml.Tree;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.rates.RateSheet;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Makes a rate sheet from a file of kind rate-sheet. */
record RateSheetReader(Fields fields, CurrencyUnit currency, Known known) {

    /** What the other files name; a set is empty when none of its kind could be read, and then what refers to it goes unchecked. */
    record Known(Set<String> bands, Set<String> grades, Set<String> zones, Set<String> materials, Set<String> added) {}

    private static final String SITES = "sites";
    private static final String CUSTOMERS = "customers";
    private static final List<String> OF_A_GRADE = List.of("hourly", "firstHour", "minimum");

    /** Empty when something needed is missing or wrong, which is then reported. */
    Optional<RateSheet> read() {
        Optional<Fields> whose = fields.child("for");
        Set<String> sites = whose.map(entry -> ids(entry, SITES)).orElse(Set.of());
        Set<String> customers = whose.map(entry -> ids(entry, CUSTOMERS)).orElse(Set.of());
        whose.filter(entry -> sites.isEmpty() && customers.isEmpty()).ifPresent(entry -> entry.problems().add(
                Code.MISSING, entry.place(), "the sheet is for nobody", "sites or customers, by id"));
        Map<String, MonetaryAmount> prices = new LinkedHashMap<>();
        fields.children("materials").forEach(entry -> entry.text("material").ifPresent(id -> {
            Names.refer(entry, "material", "material", known.materials());
            Prices.amount(entry, "price", currency).ifPresent(price -> {
                if (prices.put(id, price) != null) {
                    twice(entry, "material", id);
                }
            });
        }));
        fields.leaves("without").forEach(leaf -> {
            if (!known.added().contains(leaf.text())) {
                fields.problems().add(
                        Problem.unknownName(leaf.place(), "fee or surcharge", leaf.text(), known.added()));
            }
        });
        Optional<Fields> serviceCall = fields.child("serviceCall");
        return fields.id("id").flatMap(id -> fields.wording("name").map(name -> new RateSheet(id, name, sites,
                customers, fields.children("labor").stream().flatMap(entry -> labor(entry).stream()).toList(),
                serviceCall.map(entry -> entry.children("zones")).stream().flatMap(zones -> zones.stream())
                        .flatMap(entry -> zone(entry).stream()).toList(),
                prices, serviceCall.flatMap(entry -> entry.integer("includes")), Prices.byClass(fields, "discount"),
                ids(fields, "without"), EarlyPaymentReader.read(fields), fields.place("id"))));
    }

    private static Set<String> ids(Fields entry, String key) {
        return entry.leaves(key).stream().map(Tree.Leaf::text).collect(Collectors.toSet());
    }

    private Optional<RateSheet.Labor> labor(Fields entry) {
        Names.refer(entry, "grade", "grade", known.grades());
        if (Collections.disjoint(entry.entries().keySet(), OF_A_GRADE)) {
            entry.problems().add(Code.MISSING, entry.place(), "nothing is agreed for the grade",
                    "hourly, firstHour or minimum");
        }
        return entry.id("grade").map(grade -> new RateSheet.Labor(grade,
                some(entry, "hourly", (prices, band) -> Prices.charged(prices, band, currency)),
                some(entry, "firstHour", (prices, band) -> Prices.charged(prices, band, currency)),
                some(entry, "minimum", Fields::integer), entry.place("grade")));
    }

    private Optional<RateSheet.ServiceCall> zone(Fields entry) {
        Names.refer(entry, "zone", "zone", known.zones());
        return entry.id("zone").map(zone -> new RateSheet.ServiceCall(zone,
                some(entry, "prices", (prices, band) -> Prices.charged(prices, band, currency)),
                entry.place("zone")));
    }

    /** Values for those bands that are named. */
    private <T> Map<String, T> some(Fields entry, String key, BiFunction<Fields, String, Optional<T>> value) {
        Map<String, T> values = new HashMap<>();
        entry.child(key).ifPresent(child -> child.entries().keySet().forEach(band -> {
            if (known.bands().isEmpty() || known.bands().contains(band)) {
                value.apply(child, band).ifPresent(found -> values.put(band, found));
            } else {
                Place place = child.branch().keys().getOrDefault(band, child.place());
                entry.problems().add(Problem.unknownName(place, "labor band", band, known.bands()));
            }
        }));
        return values;
    }

    private static void twice(Fields entry, String key, String id) {
        entry.problems().add(Code.DUPLICATE_NAME, entry.place(key), "\"" + id + "\" is used a second time",
                "one price for each");
    }
}
