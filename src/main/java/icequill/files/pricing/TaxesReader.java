package icequill.files.pricing;

import icequill.explain.ConstantKey;
import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.money.Percent;
import icequill.party.Certificate;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.tax.Advances;
import icequill.tax.BlockTax;
import icequill.tax.Reliefs;
import icequill.tax.TaxPlace;
import icequill.tax.TaxPlace.Rule;
import icequill.tax.TaxRate;
import icequill.tax.TaxRate.Category;
import icequill.tax.Taxability;
import icequill.work.ChargeClass;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;

/** Makes the tax places from a file of kind taxes. */
final class TaxesReader {

    /** For classes that no sales tax touches, so that every rule has a rate. */
    private static final TaxRate UNTAXED = new TaxRate("untaxed", Category.O, List.of(), Optional.empty());

    private static final int MOST = 100;

    private final CurrencyUnit currency;

    private TaxesReader(CurrencyUnit currency) {
        this.currency = currency;
    }

    static List<TaxPlace> read(Fields fields, CurrencyUnit currency) {
        return Names.list(fields.children("places"), new TaxesReader(currency)::place);
    }

    private Optional<TaxPlace> place(String id, Fields entry) {
        List<TaxRate> rates = Names.list(entry.children("rates"), this::rate);
        Map<ChargeClass, Rule> rules = new EnumMap<>(ChargeClass.class);
        entry.child("classes").ifPresent(classes -> {
            for (ChargeClass chargeClass : ChargeClass.values()) {
                classes.child(ConstantKey.of(chargeClass))
                        .flatMap(rule -> rule(rule, entry.ids("rates"), rates))
                        .ifPresent(rule -> rules.put(chargeClass, rule));
            }
        });
        Optional<TaxPlace.Regime> regime = entry.constant("system", TaxPlace.Regime.class).or(
                () -> entry.text("system").filter("vat"::equals).map(text -> TaxPlace.Regime.VAT));
        if (regime.filter(found -> found == TaxPlace.Regime.VAT).isPresent()
                && rates.stream().anyMatch(TaxRate::isPartial)) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place("rates"), "a cap in a place with VAT",
                    "cap: in places of system sales-tax");
        }
        if (regime.filter(found -> found == TaxPlace.Regime.VAT).isPresent()
                && entry.entries().containsKey("exemptions")) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place("exemptions"),
                    "certificates free nobody of VAT", "exemptions: in places of system sales-tax");
        }
        if (entry.flag("pricesIncludeTax") && rates.stream().anyMatch(TaxRate::isPartial)) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place("pricesIncludeTax"),
                    "prices with their tax in a place that taxes each line only up to a cap",
                    "prices before tax, or rates without a cap");
        }
        if (entry.flag("pricesIncludeTax")
                && entry.constant("blocks", BlockTax.class).filter(when -> when == BlockTax.AT_USE).isPresent()) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place("blocks"),
                    "prices with their tax, and yet blocks that are not taxed when they are sold",
                    "prices before tax, or blocks: at-sale");
        }
        return rules.size() != ChargeClass.values().length || regime.isEmpty()
                ? Optional.empty()
                : entry.wording("name").map(name -> new TaxPlace(id, name, regime.get(), entry.text("state").orElse(""),
                        rules, advances(entry, regime.get()),
                        Optional.of(entry.flag("earlyPaymentReducesTax")).filter(reduces -> reduces),
                        Optional.of(entry.flag("pricesIncludeTax")).filter(included -> included),
                        reliefs(entry), entry.constant("blocks", BlockTax.class),
                        entry.place("id")));
    }

    /** Empty where nothing is said. */
    private static Optional<Advances> advances(Fields entry, TaxPlace.Regime regime) {
        Advances usual = TaxPlace.usual(regime);
        Optional<Advances.Deposits> deposits = entry.constant("deposits", Advances.Deposits.class);
        Optional<Advances.Retainages> retainages = entry.constant("retainages", Advances.Retainages.class);
        return deposits.isEmpty() && retainages.isEmpty()
                ? Optional.empty()
                : Optional.of(new Advances(deposits.orElse(usual.deposits()), retainages.orElse(usual.retainages())));
    }

    /** What each kind of certificate frees; all where nothing is said of it. */
    private static Optional<Reliefs> reliefs(Fields entry) {
        Map<Certificate.Kind, Reliefs.Relief> byKind = new EnumMap<>(Certificate.Kind.class);
        entry.child("exemptions").ifPresent(kinds -> kinds.entries().keySet().forEach(name -> Fields
                .constantOf(name, Certificate.Kind.class)
                .ifPresent(kind -> kinds.child(name).ifPresent(relief -> byKind.put(kind, new Reliefs.Relief(
                        Set.copyOf(relief.constants("classes", ChargeClass.class)),
                        relief.percent("percent", MOST).orElse(Percent.HUNDRED)))))));
        return byKind.isEmpty() ? Optional.empty() : Optional.of(new Reliefs(byKind));
    }

    private Optional<TaxRate> rate(String id, Fields entry) {
        Optional<Category> category = entry.text("category").flatMap(text -> Fields.constantOf(text, Category.class));
        List<TaxRate.Component> components = entry.children("components").stream().flatMap(part -> part.wording("name")
                .flatMap(name -> part.percent("percent", MOST)
                        .flatMap(percent -> part.constant("levy", TaxRate.Levy.class)
                                .map(levy -> new TaxRate.Component(name, percent, levy,
                                        Prices.charged(part, "cap", currency), Optional.empty()))))
                .stream()).toList();
        if (category.isEmpty()) {
            return Optional.empty();
        }
        if (category.get().isTaxed() == components.isEmpty()) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place("category"),
                    "category " + category.get() + " with " + components.size() + " components",
                    "S with one component or more; Z, E, AE, K, G and O with none");
            return Optional.empty();
        }
        return Optional.of(new TaxRate(id, category.get(), components, entry.wording("reason")));
    }

    /** @param named the ids of all rates of the place, also of those with faults of their own */
    private static Optional<Rule> rule(Fields entry, Set<String> named, List<TaxRate> rates) {
        Optional<Taxability> taxability = entry.constant("taxability", Taxability.class);
        Optional<String> name = entry.text("rate");
        Optional<TaxRate> rate = rates.stream().filter(known -> name.filter(known.id()::equals).isPresent())
                .findFirst();
        if (name.isPresent() && rate.isEmpty()) {
            if (!named.contains(name.get())) {
                entry.problems().add(Problem.unknownName(entry.place("rate"), "rate of this place", name.get(), named));
            }
            return Optional.empty();
        }
        if (taxability.isPresent() && rate.map(found -> !found.category().isTaxed()).orElse(true)
                && needsRate(taxability.get())) {
            entry.problems().add(Code.MISSING, entry.place("taxability"),
                    "taxed, but at no rate of category S", "rate: one of this place's rates of category S");
            return Optional.empty();
        }
        return taxability.map(found -> new Rule(found, rate.orElse(UNTAXED)));
    }

    private static boolean needsRate(Taxability taxability) {
        return switch (taxability) {
        case TAXABLE, TAXABLE_IF_PARTS_ON_VISIT -> true;
        case EXEMPT, SELLER_CONSUMES -> false;
        };
    }
}
