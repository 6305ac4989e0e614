package icequill.files.form;

import icequill.account.Account;
import icequill.account.AccountNotes;
import icequill.account.AccountNotes.Disputed;
import icequill.account.Credited;
import icequill.account.Invoiced;
import icequill.account.PaidBack;
import icequill.account.Payment;
import icequill.files.pricing.Prices;
import icequill.files.yaml.Fields;
import icequill.party.Shop;
import icequill.problem.Code;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Makes what is known of a customer's account from its form. Whether the bills can be true is looked at beside those of the book. */
public final class AccountReader {

    private final Fields fields;
    private final CurrencyUnit currency;

    public AccountReader(Fields fields, Shop shop) {
        this.fields = fields;
        this.currency = shop.currency();
    }

    /** Empty where it is in another currency, which is then reported. */
    public Optional<AccountNotes> read() {
        List<Payment> payments = Stream.concat(fields.children("invoices").stream().flatMap(this::paid),
                all(fields, "onAccount", this::onAccount).stream()).toList();
        AccountNotes notes = new AccountNotes(
                new Account(currency, all(fields, "invoices", this::invoiced),
                        all(fields, "creditNotes", this::credited), payments),
                all(fields, "disputed", this::disputed),
                fields.child("latePayment").flatMap(terms -> RemindersReader.late(terms, currency)),
                all(fields, "reminders", entry -> entry.day("date")));
        return isInShopsCurrency(fields, currency) ? Optional.of(notes) : Optional.empty();
    }

    /** Whether what is said of a currency is the shop's; else that is reported. */
    static boolean isInShopsCurrency(Fields fields, CurrencyUnit currency) {
        String code = currency.getCurrencyCode();
        Optional<String> other = fields.text("currency").filter(found -> !found.equals(code));
        other.ifPresent(found -> fields.problems().add(Code.NOT_ALLOWED, fields.place("currency"),
                "it is in " + found + ", the shop's bills are in " + code, code));
        return other.isEmpty();
    }

    private Optional<Invoiced> invoiced(Fields entry) {
        return entry.text("number").flatMap(number -> entry.day("date").flatMap(date -> entry.day("due")
                .flatMap(due -> total(entry).map(total -> new Invoiced(number, date, due, total,
                        entry.text("purchaseOrder"), entry.text("store"), Optional.empty(), entry.place())))));
    }

    private Optional<Credited> credited(Fields entry) {
        return entry.text("number").flatMap(number -> entry.day("date").flatMap(date -> total(entry)
                .map(total -> new Credited(number, date, total, entry.text("corrects"),
                        all(entry, "paidBack", this::paidBack), entry.place()))));
    }

    private Optional<Disputed> disputed(Fields entry) {
        return entry.text("number").map(number -> new Disputed(number, entry.text("reason").orElse(""),
                Prices.charged(entry, "amount", currency), entry.place()));
    }

    /** What was paid of an invoice counts from its own day on. */
    private Stream<Payment> paid(Fields invoice) {
        return invoice.text("number").flatMap(number -> invoice.day("date")
                .map(dated -> all(invoice, "payments", entry -> entry.day("date")
                        .flatMap(day -> Prices.charged(entry, "amount", currency)
                                .map(amount -> new Payment(day, amount, entry.text("reference"),
                                        List.of(new Payment.Share(number, day.isBefore(dated) ? dated : day, amount)),
                                        entry.place()))))))
                .stream().flatMap(List::stream);
    }

    private Optional<Payment> onAccount(Fields entry) {
        return entry.day("date").flatMap(day -> Prices.charged(entry, "amount", currency)
                .map(amount -> new Payment(day, amount, entry.text("reference"), List.of(), entry.place())));
    }

    private Optional<PaidBack> paidBack(Fields entry) {
        return entry.day("date").flatMap(day -> Prices.charged(entry, "amount", currency)
                .map(amount -> new PaidBack(day, amount, entry.text("reference"), entry.place())));
    }

    private Optional<MonetaryAmount> total(Fields entry) {
        return Prices.charged(entry, "total", currency);
    }

    private static <T> List<T> all(Fields fields, String key, Function<Fields, Optional<T>> read) {
        return fields.children(key).stream().flatMap(entry -> read.apply(entry).stream()).toList();
    }
}
