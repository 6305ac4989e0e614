package icequill.files.pricing;

import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.files.yaml.Tree;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.money.Reduction;
import icequill.problem.Code;
import icequill.rates.Adjustments;
import icequill.rates.Applies;
import icequill.rates.CardCost;
import icequill.rates.ClassDiscount;
import icequill.rates.DiagnosisCredit;
import icequill.rates.DocumentDiscount;
import icequill.rates.Fee;
import icequill.rates.Modifier;
import icequill.rates.Surcharge;
import icequill.rates.WarrantyPayer;
import icequill.work.ChargeClass;
import icequill.work.Unit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * Makes modifiers, fees, surcharges and discounts from a file of kind adjustments.
 *
 * @param paymentDays of the shop: from an invoice to the day it is due
 */
record AdjustmentsReader(Fields fields, CurrencyUnit currency, int paymentDays) {

    private static final int MOST = 100;
    private static final List<String> OF_PARTS = List.of("on", "floor", "cap");
    private static final List<String> OF_AMOUNTS = List.of("under");

    Adjustments read() {
        return new Adjustments(Names.list(fields.children("modifiers"), this::modifier),
                Names.list(fields.children("fees"), this::fee),
                Names.list(fields.children("surcharges"), this::surcharge),
                Names.list(fields.children("classDiscounts"), this::classDiscount),
                Names.list(fields.children("documentDiscounts"), this::documentDiscount),
                EarlyPaymentReader.read(fields, paymentDays), cardCost(), diagnosisCredit(),
                fields.children("warrantyPayers").stream().flatMap(entry -> payer(entry).stream()).toList());
    }

    private Optional<WarrantyPayer> payer(Fields entry) {
        return entry.text("name").flatMap(name -> entry.integer("sendDays").map(days -> new WarrantyPayer(name,
                entry.entries().containsKey("hourly") ? Prices.amount(entry, "hourly", currency) : Optional.empty(),
                entry.integer("mostMinutes"), days, entry.integer("returnDays"))));
    }

    private Optional<DiagnosisCredit> diagnosisCredit() {
        return fields.child("diagnosisCredit").flatMap(entry -> entry.integer("days")
                .map(days -> new DiagnosisCredit(days, entry.flag("serviceCall"))));
    }

    private Optional<CardCost> cardCost() {
        return fields.child("cardCost").flatMap(entry -> entry.percent("percent", MOST)
                .flatMap(percent -> Prices.amount(entry, "each", currency).map(each -> new CardCost(percent, each))));
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
                on(entry), chargeClass.get(), applies(entry), entry.place("percent")));
    }

    private static Set<ChargeClass> on(Fields entry) {
        return Set.copyOf(entry.constants("on", ChargeClass.class));
    }

    private static Applies applies(Fields entry) {
        return new Applies(entry.flag("always"),
                entry.leaves("regions").stream().map(Tree.Leaf::text).collect(Collectors.toSet()), entry.place("id"));
    }

    private Optional<Fee> fee(String id, Fields entry) {
        boolean isFlat = entry.entries().containsKey("amount");
        if (isFlat == entry.entries().containsKey("percent")) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place(), "needs an amount or a percent", "one of the two");
            return Optional.empty();
        }
        (isFlat ? OF_PARTS : OF_AMOUNTS).stream().filter(entry.entries()::containsKey)
                .forEach(key -> entry.problems().add(Code.NOT_ALLOWED, entry.place(key),
                        key + " does not go with " + (isFlat ? "an amount" : "a percent"),
                        isFlat ? "under, or nothing beside the amount" : "on, floor and cap"));
        Optional<Fee.Amount> amount = isFlat ? flat(entry) : part(entry);
        return amount.flatMap(found -> entry.constant("class", ChargeClass.class).flatMap(on -> entry.wording("name")
                .map(name -> new Fee(id, name, on, found, applies(entry)))));
    }

    private Optional<Fee.Amount> flat(Fields entry) {
        return Prices.charged(entry, "amount", currency)
                .map(amount -> new Fee.Flat(amount, Prices.charged(entry, "under", currency)));
    }

    private Optional<Fee.Amount> part(Fields entry) {
        if (on(entry).isEmpty() && !entry.entries().containsKey("on")) {
            entry.problems().add(Code.MISSING, entry.place(), "\"on\" is missing", "the classes it is figured on");
        }
        Optional<MonetaryAmount> floor = Prices.charged(entry, "floor", currency);
        Optional<MonetaryAmount> cap = Prices.charged(entry, "cap", currency);
        if (floor.isPresent() && cap.filter(floor.get()::isGreaterThan).isPresent()) {
            entry.problems().add(Code.WRONG_ORDER, entry.place("cap"),
                    "the cap " + Amounts.plain(cap.get()) + " is below the floor " + Amounts.plain(floor.get()),
                    "floor: the smaller amount");
        }
        return entry.percent("percent", MOST).map(percent -> new Fee.Part(percent, on(entry), floor, cap));
    }

    private Optional<ClassDiscount> classDiscount(String id, Fields entry) {
        return entry.wording("name").map(
                name -> new ClassDiscount(id, name, Prices.byClass(entry, "percents"), Optional.empty(),
                        entry.place("percents")));
    }

    private Optional<DocumentDiscount> documentDiscount(String id, Fields entry) {
        Optional<MonetaryAmount> amount = Prices.charged(entry, "amount", currency);
        Optional<Percent> percent = entry.percent("percent", MOST);
        if (entry.entries().containsKey("amount") == entry.entries().containsKey("percent")) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place(), "needs an amount or a percent", "one of the two");
        }
        Optional<Reduction> off = amount.isPresent()
                ? amount.map(Reduction.Fixed::new)
                : percent.map(Reduction.Part::new);
        return off.flatMap(found -> entry.wording("name")
                .map(name -> new DocumentDiscount(id, name, found, entry.place())));
    }
}
