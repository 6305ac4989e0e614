package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Rounding;
import icequill.party.Machine;
import icequill.pricer.ResolvedVisit.Use;
import icequill.rates.Agreed;
import icequill.rates.Material;
import icequill.rates.Material.Given;
import icequill.rates.Material.MarkedUp;
import icequill.work.Outcome;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Prices materials: by measure, each use by itself, or by whole packs, raised once per visit. */
final class MaterialPricing {

    private static final String PACK = "pack";

    private final CurrencyUnit currency;
    private final Agreed agreed;

    MaterialPricing(CurrencyUnit currency, Agreed agreed) {
        this.currency = currency;
        this.agreed = agreed;
    }

    List<Charge> charges(List<Use> uses) {
        List<Charge> charges = new ArrayList<>();
        Map<PackKey, List<Use>> packed = new LinkedHashMap<>();
        for (Use use : uses) {
            if (use.material().pack().isPresent()) {
                packed.computeIfAbsent(new PackKey(use.material(), use.outcome()), key -> new ArrayList<>()).add(use);
            } else {
                charges.add(byMeasure(use));
            }
        }
        packed.forEach((key, group) -> charges.add(byPack(key, group)));
        return charges;
    }

    /** Packs are shared between machines, but not between those who pay. */
    private record PackKey(Material material, Outcome outcome) {}

    private Charge byMeasure(Use use) {
        Material material = use.material();
        String unit = material.unit().symbol();
        MonetaryAmount price = unitPrice(material);
        Figure quantity = Figure.term(use.quantity(), unit);
        Figure list = quantity.times(Figure.price(price, unit)).rounded(Rounding.LINE, currency);
        return new Charge(material.chargeClass(), use.outcome(), text(use), use.machine(),
                new Quantity(use.quantity(), material.unit()), Optional.of(new UnitPrice(price, material.unit())), list,
                agreed(material, dose(use)), cost(material, quantity, unit), use.less());
    }

    private Charge byPack(PackKey key, List<Use> uses) {
        Material material = key.material();
        BigDecimal size = material.pack().orElseThrow();
        BigDecimal used = uses.stream().map(Use::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
        String unit = material.unit().symbol();
        Figure packs = new Figure.RaisedTo(Figure.term(used, unit), size).over(Figure.term(size, unit + "/" + PACK));
        BigDecimal number = Rounding.halfUp(packs.exact(), 0);
        MonetaryAmount price = unitPrice(material);
        Figure list = packs.times(Figure.price(price, PACK)).rounded(Rounding.LINE, currency);
        List<Phrase> reasons = agreed(material, List.of(Phrase.of("reason.packs", new Fact.Measure(used, unit),
                new Fact.Measure(number, ""), new Fact.Measure(size, unit))));
        Phrase text = Phrase.of("line.pack", Names.of(material.name()), new Fact.Measure(size, unit));
        return new Charge(material.chargeClass(), key.outcome(), text, sharedMachine(uses),
                new Quantity(number, Unit.EACH), Optional.of(new UnitPrice(price, Unit.EACH)), list, reasons,
                cost(material, packs, PACK),
                uses.stream().flatMap(use -> use.less().stream()).findFirst());
    }

    private static Optional<Machine> sharedMachine(List<Use> uses) {
        List<Optional<Machine>> machines = uses.stream().map(Use::machine).distinct().toList();
        return machines.size() == 1 ? machines.getFirst() : Optional.empty();
    }

    private MonetaryAmount unitPrice(Material material) {
        return UnitPrice.of(material, currency);
    }

    /** The reasons, and whose price it is where it is not the shop's own. */
    private List<Phrase> agreed(Material material, List<Phrase> reasons) {
        return Stream.concat(reasons.stream(), agreed.material(material)
                .map(name -> Phrase.of("reason.rate-sheet", Names.of(name))).stream()).toList();
    }

    private static Phrase text(Use use) {
        Fact name = Names.of(use.material().name());
        return use.dosedBy().map(task -> Phrase.of("line.dose", name, Names.of(task.name())))
                .orElseGet(() -> Phrase.of("line.material", name));
    }

    private static List<Phrase> dose(Use use) {
        return use.dosedBy()
                .map(task -> List.of(Phrase.of("reason.dose",
                        new Fact.Measure(use.quantity(), use.material().unit().symbol()), Names.of(task.name()),
                        new Fact.Text(use.machine().orElseThrow().where()))))
                .orElse(List.of());
    }

    private Cost cost(Material material, Figure quantity, String per) {
        MonetaryAmount each = material.price().cost();
        Figure figure = quantity.times(Figure.price(each, per)).rounded(Rounding.COST, currency);
        Explanation how = Explanation.of(figure,
                Phrase.of("owner.material", new Fact.Amount(each), Names.of(material.place())));
        Explanation full = switch (material.price()) {
        case Given given -> how;
        case MarkedUp marked -> how
                .because(Phrase.of("owner.markup", new Fact.Part(marked.markup()), Names.of(material.place())));
        };
        return new Cost(full.amount(currency), full);
    }
}
