package icequill.files.pricing;

import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.party.Period;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.rates.RefrigerantRules;
import icequill.rates.RefrigerantRules.Category;
import icequill.rates.RefrigerantRules.Cylinder;
import icequill.rates.RefrigerantRules.DisposalRule;
import icequill.rates.RefrigerantRules.Kind;
import icequill.rates.RefrigerantRules.LeakRule;
import icequill.rates.RefrigerantRules.Mark;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes what is known of refrigerants from the files of kind refrigerants. */
final class RefrigerantsReader {

    private RefrigerantsReader() {
    }

    static RefrigerantRules read(List<Fields> files) {
        List<Kind> kinds = kinds(files);
        return new RefrigerantRules(kinds,
                files.stream().flatMap(file -> Names.list(file.children("leaks"), RefrigerantsReader::leak).stream())
                        .toList(),
                files.stream().flatMap(file -> file.child("disposal").stream())
                        .flatMap(entry -> disposal(entry).stream()).findFirst(),
                files.stream().flatMap(file -> file.constant("machines", Category.class).stream()).findFirst()
                        .orElse(RefrigerantRules.NONE.category()),
                files.stream().flatMap(file -> file.children("cylinders").stream())
                        .flatMap(entry -> cylinder(entry, kinds).stream()).toList());
    }

    private static List<Kind> kinds(List<Fields> files) {
        List<Kind> kinds = new ArrayList<>();
        files.stream().flatMap(file -> file.children("refrigerants").stream()).forEach(entry -> kind(entry)
                .ifPresent(kind -> {
                    if (kinds.stream().anyMatch(other -> RefrigerantRules.isSame(other.name(), kind.name()))) {
                        entry.problems().add(Code.DUPLICATE_NAME, entry.place("name"),
                                "\"" + kind.name() + "\" is used a second time", "each refrigerant once");
                    }
                    kinds.add(kind);
                }));
        return kinds;
    }

    private static Optional<Kind> kind(Fields entry) {
        return entry.text("name").flatMap(name -> entry.number("gwp").map(gwp -> new Kind(name,
                entry.flag("ozoneDepleting"), gwp, entry.flag("lowPressure"))));
    }

    private static Optional<LeakRule> leak(String id, Fields entry) {
        Optional<Period> period = entry.child("effective").flatMap(days -> days.day("from").flatMap(days::period));
        Optional<BigDecimal> pounds = entry.number("pounds");
        Optional<Mark> mark = entry.constant("mark", Mark.class);
        Optional<Map<Category, BigDecimal>> limits = entry.child("limits").map(RefrigerantsReader::limits);
        if (period.isEmpty() || pounds.isEmpty() || mark.isEmpty() || limits.isEmpty()) {
            return Optional.empty();
        }
        return entry.wording("name").map(name -> new LeakRule(id, name, period.get(), entry.flag("ozoneDepleting"),
                entry.number("gwpAbove"), pounds.get(), limits.get(), mark.get(), entry.text("source").orElse("")));
    }

    private static Map<Category, BigDecimal> limits(Fields entry) {
        Map<Category, BigDecimal> limits = new EnumMap<>(Category.class);
        entry.number("industrialProcess").ifPresent(most -> limits.put(Category.INDUSTRIAL_PROCESS, most));
        entry.number("commercialRefrigeration").ifPresent(most -> limits.put(Category.COMMERCIAL_REFRIGERATION, most));
        entry.number("comfortCooling").ifPresent(most -> limits.put(Category.COMFORT_COOLING, most));
        return limits;
    }

    private static Optional<DisposalRule> disposal(Fields entry) {
        Optional<BigDecimal> above = entry.number("above");
        Optional<BigDecimal> below = entry.number("below");
        Optional<Mark> mark = entry.constant("mark", Mark.class);
        if (above.isEmpty() || below.isEmpty() || mark.isEmpty()) {
            return Optional.empty();
        }
        if (above.get().compareTo(below.get()) >= 0) {
            entry.problems().add(Code.WRONG_ORDER, entry.place("below"), "above " + above.get().toPlainString()
                    + " lb and below " + below.get().toPlainString() + " lb", "below is the larger of the two");
        }
        return entry.wording("name").map(name -> new DisposalRule(name, above.get(), below.get(), mark.get(),
                entry.text("source").orElse("")));
    }

    private static Optional<Cylinder> cylinder(Fields entry, List<Kind> kinds) {
        Optional<String> kind = entry.text("kind");
        kind.filter(name -> kinds.stream().noneMatch(known -> RefrigerantRules.isSame(known.name(), name)))
                .ifPresent(name -> entry.problems().add(Problem.unknownName(entry.place("kind"), "refrigerant", name,
                        kinds.stream().map(Kind::name).toList())));
        return entry.text("name").flatMap(name -> kind.flatMap(holds -> entry.day("on")
                .flatMap(day -> entry.number("ounces").map(held -> new Cylinder(name, holds, day, held)))));
    }
}
