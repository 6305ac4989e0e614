package icequill.files.form;

import icequill.account.PaymentRequest;
import icequill.account.PaymentRequest.Named;
import icequill.account.Way;
import icequill.files.pricing.Prices;
import icequill.files.yaml.Fields;
import icequill.party.Shop;
import icequill.problem.Code;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Makes a payment from its form. */
public final class PaymentReader {

    private static final String BILLS = "for";
    private static final String AMOUNT = "amount";

    private final Fields fields;
    private final CurrencyUnit currency;

    public PaymentReader(Fields fields, Shop shop) {
        this.fields = fields;
        this.currency = shop.currency();
    }

    /** Empty when something needed is missing or wrong, which is then reported. */
    public Optional<PaymentRequest> read() {
        Optional<String> customer = fields.id("customer");
        Optional<LocalDate> day = fields.day("date");
        Optional<MonetaryAmount> amount = amount(fields);
        boolean isSaid = fields.entries().containsKey(BILLS);
        boolean isOnAccount = fields.flag("onAccount");
        if (isSaid && isOnAccount) {
            fields.problems().add(Code.NOT_ALLOWED, fields.place("onAccount"), "both on account and for bills",
                    "one of them; what is left of a payment for bills is on account by itself");
        }
        Optional<List<Named>> bills = isSaid || isOnAccount
                ? Optional.of(fields.children(BILLS).stream().flatMap(entry -> named(entry).stream()).toList())
                : Optional.empty();
        boolean isSound = AccountReader.isInShopsCurrency(fields, currency);
        return customer.filter(known -> isSound).flatMap(known -> day.flatMap(on -> amount
                .map(paid -> new PaymentRequest(known, on, paid,
                        fields.constant("way", Way.class).orElse(Way.OTHER), fields.flag("back"),
                        fields.text("reference"), bills, fields.place()))));
    }

    private Optional<Named> named(Fields entry) {
        Optional<MonetaryAmount> amount = amount(entry);
        Optional<LocalDate> from = entry.day("from");
        return entry.text("number").map(number -> new Named(number, amount, from, entry.place()));
    }

    private Optional<MonetaryAmount> amount(Fields entry) {
        Optional<MonetaryAmount> amount = Prices.charged(entry, AMOUNT, currency);
        amount.filter(MonetaryAmount::isZero).ifPresent(none -> entry.problems().add(Code.OUT_OF_RANGE,
                entry.place(AMOUNT), "nothing is paid", "more than 0"));
        return amount.filter(MonetaryAmount::isPositive);
    }
}
