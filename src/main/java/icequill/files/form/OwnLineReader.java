package icequill.files.form;

import icequill.files.pricing.Prices;
import icequill.files.yaml.Fields;
import icequill.money.Percent;
import icequill.problem.Code;
import icequill.work.Block;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import icequill.work.OwnPrice;
import icequill.work.Quantity;
import icequill.work.TakenBack;
import icequill.work.Unit;
import icequill.work.VisitLine;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Makes a line in one's own words, such as a part bought for this once, from its entry. */
record OwnLineReader(Fields entry, CurrencyUnit currency) {

    /** The keys that only such lines have. */
    static final List<String> KEYS = List.of("class", "unit", "price", "cost", "markup", "back", "block");

    private static final int MOST_MARKUP = 1000;

    /** Empty when something needed is missing or wrong, which is then reported. */
    Optional<VisitLine> read(Outcome outcome) {
        if (!has("class")) {
            entry.problems().add(Code.MISSING, entry.place(), "\"class\" is missing",
                    "what it is for: cleaning, repair, diagnosis, travel, chemicals, filters, parts or disposal");
        }
        Optional<TakenBack> back = entry.constant("back", TakenBack.class);
        Optional<OwnPrice> price = price();
        Optional<Block> block = entry.child("block").flatMap(sold -> new BlockReader(entry, sold).read(outcome));
        if (back.isPresent()) {
            checkBack(outcome);
        }
        Optional<ChargeClass> on = entry.constant("class", ChargeClass.class);
        Unit unit = entry.text("unit").flatMap(Unit::ofSymbol).orElse(Unit.EACH);
        return on.flatMap(chargeClass -> price.map(found -> new VisitLine.Own(entry.text("text").orElse(""),
                chargeClass, new Quantity(entry.number("amount").orElse(BigDecimal.ONE), unit), found, back, block,
                entry.text("machine"), outcome, new OneOffReader(entry, currency).read(outcome), entry.place("text"))));
    }

    Optional<OwnPrice> price() {
        Optional<MonetaryAmount> price = Prices.amount(entry, "price", currency);
        Optional<MonetaryAmount> cost = Prices.amount(entry, "cost", currency);
        if (has("price") && has("markup")) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place("markup"), "both a price and a markup",
                    "one of the two");
            return Optional.empty();
        }
        if (!has("price") && !has("cost")) {
            entry.problems().add(Code.MISSING, entry.place(), "neither a price nor a cost",
                    "price: for one; or cost: for one, with a markup unless it is passed on at cost");
            return Optional.empty();
        }
        return has("price")
                ? price.map(amount -> new OwnPrice.Given(amount, cost))
                : cost.map(amount -> new OwnPrice.MarkedUp(amount,
                        entry.percent("markup", MOST_MARKUP).orElse(Percent.ZERO)));
    }

    /** What is taken back is nobody's to give, and has the price that was agreed for it. */
    private void checkBack(Outcome outcome) {
        if (!outcome.isCharged()) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place("outcome"),
                    "taken back, and yet another outcome than charged", "no outcome beside back");
        }
        if (!has("price")) {
            entry.problems().add(Code.MISSING, entry.place("back"), "taken back, but \"price\" is missing",
                    "price: what the customer gets for one, above 0 as it is written here");
        }
    }

    private boolean has(String key) {
        return entry.entries().containsKey(key);
    }
}
