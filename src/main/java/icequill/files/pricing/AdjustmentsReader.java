package icequill.files.pricing;

import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.money.Percent;
import icequill.problem.Code;
import icequill.rates.Adjustments;
import icequill.rates.ClassDiscount;
import icequill.rates.DocumentDiscount;
import icequill.rates.Modifier;
import icequill.rates.Surcharge;
import icequill.work.ChargeClass;
import icequill.work.Unit;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Makes modifiers, surcharges and discounts from a file of kind adjustments. */
record AdjustmentsReader(Fields fields, CurrencyUnit currency) {

    private static final int MOST = 100;

    Adjustments read() {
        return new Adjustments(Names.list(fields.children("modifiers"), this::modifier),
                Names.list(fields.children("surcharges"), this::surcharge),
                Names.list(fields.children("classDiscounts"), this::classDiscount),
                Names.list(fields.children("documentDiscounts"), this::documentDiscount));
    }

    private Optional<Modifier> modifier(String id, Fields entry) {
        Optional<ChargeClass> chargeClass = entry.constant("class", ChargeClass.class);
        Optional<MonetaryAmount> price = Prices.amount(entry, "price", currency);
        Optional<Unit> unit = entry.text("unit").flatMap(Unit::ofSymbol);
        if (chargeClass.isEmpty() || price.isEmpty() || unit.isEmpty()) {
            return Optional.empty();
        }
        return entry.wording("name").map(name -> new Modifier(id, name, chargeClass.get(), price.get(), unit.get(),
                entry.flag("insteadOfLabor"), entry.place("price")));
    }

    private Optional<Surcharge> surcharge(String id, Fields entry) {
        Optional<Percent> percent = entry.percent("percent", MOST);
        Optional<ChargeClass> chargeClass = entry.constant("class", ChargeClass.class);
        if (percent.isEmpty() || chargeClass.isEmpty()) {
            return Optional.empty();
        }
        return entry.wording("name").map(name -> new Surcharge(id, name, percent.get(),
                entry.leaves("on").stream().flatMap(leaf -> Fields.constantOf(leaf.text(), ChargeClass.class).stream())
                        .collect(Collectors.toSet()),
                chargeClass.get(), entry.flag("always"), entry.place("percent")));
    }

    private Optional<ClassDiscount> classDiscount(String id, Fields entry) {
        return entry.wording("name").map(
                name -> new ClassDiscount(id, name, Prices.byClass(entry, "percents"), entry.place("percents")));
    }

    private Optional<DocumentDiscount> documentDiscount(String id, Fields entry) {
        Optional<MonetaryAmount> amount = Prices.charged(entry, "amount", currency);
        Optional<Percent> percent = entry.percent("percent", MOST);
        if (entry.entries().containsKey("amount") == entry.entries().containsKey("percent")) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place(), "needs an amount or a percent", "one of the two");
        }
        Optional<DocumentDiscount.Off> off = amount.isPresent()
                ? amount.map(DocumentDiscount.Fixed::new)
                : percent.map(DocumentDiscount.Part::new);
        return off.flatMap(found -> entry.wording("name")
                .map(name -> new DocumentDiscount(id, name, found, entry.place())));
    }
}
