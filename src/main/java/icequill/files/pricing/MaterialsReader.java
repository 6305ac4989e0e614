package icequill.files.pricing;

import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.rates.Label;
import icequill.rates.Material;
import icequill.work.ChargeClass;
import icequill.work.Chemistry;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Makes the materials from a file of kind materials. */
final class MaterialsReader {

    private static final int MOST_MARKUP = 1000;

    private final Fields fields;
    private final CurrencyUnit currency;
    private final List<Bracket> brackets;

    MaterialsReader(Fields fields, CurrencyUnit currency) {
        this.fields = fields;
        this.currency = currency;
        this.brackets = fields.children("markupBrackets").stream().flatMap(entry -> bracket(entry).stream()).toList();
        checkRising();
    }

    /** A markup for costs up to an amount; empty for all others. */
    private record Bracket(Optional<BigDecimal> upTo, Percent markup, Place place) {
        boolean holdsFor(BigDecimal cost) {
            return upTo.map(most -> cost.compareTo(most) <= 0).orElse(true);
        }

        boolean reaches(Bracket other) {
            return other.upTo.map(this::holdsFor).orElse(upTo.isEmpty());
        }
    }

    /** The first bracket that fits is used, so one that stands after a wider one would never be. */
    private void checkRising() {
        for (int i = 1; i < brackets.size(); i++) {
            if (brackets.get(i - 1).reaches(brackets.get(i))) {
                fields.problems().add(Code.WRONG_ORDER, brackets.get(i).place(), "this bracket is never used",
                        "brackets by rising upTo, the one without upTo last");
            }
        }
    }

    List<Material> read() {
        return Names.list(fields.children("items"), this::material);
    }

    private static Optional<Bracket> bracket(Fields entry) {
        return entry.percent("percent", MOST_MARKUP)
                .map(markup -> new Bracket(entry.number("upTo"), markup, entry.place()));
    }

    private Optional<Material> material(String id, Fields entry) {
        Optional<ChargeClass> chargeClass = entry.constant("class", ChargeClass.class);
        Optional<Unit> unit = entry.text("unit").flatMap(Unit::ofSymbol);
        Optional<Material.Price> price = price(entry);
        if (chargeClass.isEmpty() || unit.isEmpty() || price.isEmpty()) {
            return Optional.empty();
        }
        return entry.wording("name")
                .map(name -> new Material(id, name, entry.text("partNumber"), chargeClass.get(), unit.get(),
                        entry.number("pack").filter(size -> size.signum() > 0), price.get(), entry.text("registration"),
                        entry.child("label").flatMap(MaterialsReader::label),
                        entry.place("cost")));
    }

    private static Optional<Label> label(Fields entry) {
        Optional<Unit> per = entry.text("per").flatMap(Unit::ofSymbol);
        Optional<Chemistry> chemistry = entry.constant("chemistry", Chemistry.class);
        Optional<Label.Minutes> minutes = entry.child("minutes")
                .flatMap(span -> minutes(span, chemistry.equals(Optional.of(Chemistry.ACID))));
        return chemistry.flatMap(kind -> entry.number("most").flatMap(most -> per.flatMap(unit -> minutes
                .map(span -> new Label(kind, most, unit, span, entry.number("unrinsed"))))));
    }

    private static Optional<Label.Minutes> minutes(Fields entry, boolean ofAcid) {
        Optional<Integer> most = entry.integer("most");
        if (most.isEmpty() && ofAcid && !entry.entries().containsKey("most")) {
            entry.problems().add(Code.MISSING, entry.place(), "no label of an acid without the longest time",
                    "most: minutes after which it is flushed out");
        }
        Optional<Integer> least = entry.integer("least").filter(minutes -> minutes >= 0);
        if (least.isPresent() && most.isPresent() && least.get() > most.get()) {
            entry.problems().add(Code.WRONG_ORDER, entry.place("least"),
                    "at least " + least.get() + " minutes, but at most " + most.get(), "the smaller number first");
            return Optional.empty();
        }
        return least.map(minutes -> new Label.Minutes(minutes, most));
    }

    private Optional<Material.Price> price(Fields entry) {
        Optional<MonetaryAmount> cost = Prices.amount(entry, "cost", currency);
        Optional<MonetaryAmount> price = Prices.amount(entry, "price", currency);
        Optional<Percent> markup = entry.percent("markup", MOST_MARKUP);
        if (price.isPresent() && markup.isPresent()) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place("markup"), "both a price and a markup",
                    "one of the two");
            return Optional.empty();
        }
        if (cost.isEmpty()) {
            return Optional.empty();
        }
        if (price.isPresent()) {
            return Optional.of(new Material.Given(price.get(), cost.get()));
        }
        BigDecimal each = Amounts.number(cost.get());
        Optional<Percent> used = markup.isPresent()
                ? markup
                : brackets.stream().filter(bracket -> bracket.holdsFor(each)).map(Bracket::markup).findFirst();
        if (used.isEmpty()) {
            entry.problems().add(Code.MISSING, entry.place(), "no price, no markup, and no bracket for this cost",
                    "a price, a markup, or a last bracket without upTo");
        }
        return used.map(percent -> new Material.MarkedUp(cost.get(), percent));
    }
}
