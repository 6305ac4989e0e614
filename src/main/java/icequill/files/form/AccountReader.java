package icequill.files.form;

import icequill.account.Account;
import icequill.account.AccountOf;
import icequill.account.AccountOf.Holder;
import icequill.account.AccountRules;
import icequill.account.Credited;
import icequill.account.Invoiced;
import icequill.account.Payment;
import icequill.files.pricing.Prices;
import icequill.files.yaml.Fields;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.problem.Problem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Makes a customer's account from its file. */
public final class AccountReader {

    private static final String ONE_OF_THEM = "one of them: whose account it is";

    private final Fields fields;
    private final CurrencyUnit currency;

    public AccountReader(Fields fields, Shop shop) {
        this.fields = fields;
        this.currency = shop.currency();
    }

    /** Empty when something needed is missing or wrong, or cannot be true, which is then reported. */
    public Optional<AccountOf> read(String id) {
        Optional<Holder> holder = holder();
        Account account = new Account(currency, all(fields, "invoices", this::invoiced),
                all(fields, "creditNotes", this::credited), payments(fields, "onAccount"));
        fields.problems().addAll(AccountRules.problems(account));
        Optional<AccountOf> whole = holder.map(found -> new AccountOf(id, found, account,
                fields.child("latePayment").flatMap(terms -> RemindersReader.late(terms, currency)),
                all(fields, "reminders", entry -> entry.day("date"))));
        return isInShopsCurrency() ? whole : Optional.empty();
    }

    private boolean isInShopsCurrency() {
        String code = currency.getCurrencyCode();
        Optional<String> other = fields.text("currency").filter(found -> !found.equals(code));
        other.ifPresent(found -> fields.problems().add(Code.NOT_ALLOWED, fields.place("currency"),
                "the account is in " + found + ", the shop's invoices are in " + code,
                "an account for each currency, in a shop folder of that currency"));
        return other.isEmpty();
    }

    private Optional<Holder> holder() {
        boolean bySite = fields.entries().containsKey("site");
        boolean named = fields.entries().containsKey("billTo");
        if (bySite && named) {
            fields.problems().add(Code.NOT_ALLOWED, fields.place("site"), "both a site and a billTo", ONE_OF_THEM);
            return Optional.empty();
        }
        if (!bySite && !named && !isMisspelled()) {
            fields.problems().add(Code.MISSING, fields.place(), "neither a site nor a billTo", ONE_OF_THEM);
        }
        return bySite
                ? fields.id("site").map(site -> new Holder.Site(site, fields.place("site")))
                : fields.child("billTo").flatMap(SiteReader::billed)
                        .map(billTo -> new Holder.Named(billTo, fields.text("language").flatMap(Language::ofTag),
                                fields.text("vendorNumber")));
    }

    /** Whether a key that is meant to say whose account it is was reported as unknown already. */
    private boolean isMisspelled() {
        return fields.entries().keySet().stream()
                .anyMatch(key -> Problem.nearest(key, List.of("site", "billTo")).isPresent());
    }

    private Optional<Invoiced> invoiced(Fields entry) {
        return entry.text("number").flatMap(number -> entry.day("date").flatMap(date -> entry.day("due")
                .flatMap(due -> total(entry).map(total -> new Invoiced(number, date, due, total,
                        entry.text("purchaseOrder"), entry.text("store"), payments(entry, "payments"),
                        entry.child("disputed").map(this::dispute), entry.place())))));
    }

    private Optional<Credited> credited(Fields entry) {
        return entry.text("number").flatMap(number -> entry.day("date").flatMap(date -> total(entry)
                .map(total -> new Credited(number, date, total, entry.text("corrects"), payments(entry, "paidBack"),
                        entry.place()))));
    }

    private Invoiced.Dispute dispute(Fields entry) {
        return new Invoiced.Dispute(entry.text("reason").orElse(""), Prices.charged(entry, "amount", currency),
                entry.place());
    }

    private List<Payment> payments(Fields entry, String key) {
        return all(entry, key, this::payment);
    }

    private Optional<Payment> payment(Fields entry) {
        Optional<LocalDate> date = entry.day("date");
        Optional<MonetaryAmount> amount = Prices.charged(entry, "amount", currency);
        return date.flatMap(day -> amount
                .map(paid -> new Payment(day, paid, entry.text("reference"), entry.place())));
    }

    private Optional<MonetaryAmount> total(Fields entry) {
        return Prices.charged(entry, "total", currency);
    }

    private static <T> List<T> all(Fields fields, String key, Function<Fields, Optional<T>> read) {
        return fields.children(key).stream().flatMap(entry -> read.apply(entry).stream()).toList();
    }
}
