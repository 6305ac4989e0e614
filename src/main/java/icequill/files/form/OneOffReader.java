package icequill.files.form;

import icequill.files.pricing.Prices;
import icequill.files.yaml.Fields;
import icequill.money.Percent;
import icequill.money.Reduction;
import icequill.problem.Code;
import icequill.work.ChargeClass;
import icequill.work.OneOff;
import icequill.work.Outcome;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Makes discounts given for this once from the entry of what they are given on. */
record OneOffReader(Fields entry, CurrencyUnit currency) {

    private static final String KEY = "less";
    private static final int MOST_PERCENT = 100;

    /** Empty when nothing is taken off, or when what is written is wrong, which is then reported. */
    Optional<OneOff> read(Outcome outcome) {
        if (!entry.entries().containsKey(KEY)) {
            return Optional.empty();
        }
        if (!outcome.isCharged()) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place(KEY), "a discount on what the customer does not pay",
                    "less: on lines that are charged");
        }
        if (entry.entries().containsKey("back")) {
            entry.problems().add(Code.NOT_ALLOWED, entry.place(KEY), "a discount on what is taken back",
                    "the price that was agreed for it");
        }
        return entry.child(KEY).flatMap(off -> reduction(off)
                .map(found -> new OneOff(found, off.text("reason").orElse(""), entry.place(KEY))));
    }

    /** On all charges of a class. */
    static Optional<OneOff.OnClass> onClass(Fields off) {
        return off.constant("class", ChargeClass.class).flatMap(chargeClass -> off.percent("percent", MOST_PERCENT)
                .map(percent -> new OneOff.OnClass(chargeClass, percent, off.text("reason").orElse(""), off.place())));
    }

    private Optional<Reduction> reduction(Fields off) {
        Optional<MonetaryAmount> amount = Prices.charged(off, "amount", currency);
        Optional<Percent> percent = off.percent("percent", MOST_PERCENT);
        if (off.entries().containsKey("amount") == off.entries().containsKey("percent")) {
            off.problems().add(Code.NOT_ALLOWED, entry.place(KEY), "needs an amount or a percent", "one of the two");
            return Optional.empty();
        }
        return amount.isPresent() ? amount.map(Reduction.Fixed::new) : percent.map(Reduction.Part::new);
    }
}
