package icequill.office.billing;

import icequill.account.PaymentRequest;
import icequill.answer.EntryFlag;
import icequill.answer.PaymentSheet;
import icequill.answer.register.PaymentList;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.yaml.Column;
import icequill.files.yaml.GivenValue;
import icequill.files.yaml.Tree;
import icequill.files.yaml.ValueTree;
import icequill.ledger.Reading;
import icequill.ledger.entries.PaymentEntry;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.GlyphCheck;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.ShopFolder;
import icequill.shop.UnknownName;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The office that notes what customers paid, and what it is for. */
public final class PaymentOffice {

    private final ShopBook book;
    private final LocalDate today;

    private PaymentOffice(ShopBook book) {
        this.book = book;
        this.today = ShopDay.today(book.folder(), book.clock());
    }

    public static PaymentOffice of(Path folder, Clock clock) {
        return new PaymentOffice(ShopBook.of(folder, clock));
    }

    /**
     * Notes a payment.
     *
     * @param id empty to make one of the customer and the day
     * @param flags further values by the names of their flags
     */
    public Validated<PaymentSheet> add(Optional<String> id, String customer, String amount, Map<String, String> flags) {
        ShopFolder shop = BookForms.shop(book);
        Map<Column, GivenValue> values = new LinkedHashMap<>();
        values.put(Column.LISTED_PAYMENT.getFirst(), new GivenValue(customer, new Place("", 0, "CUSTOMER")));
        values.put(Column.LISTED_PAYMENT.get(1), new GivenValue(amount, new Place("", 0, "AMOUNT")));
        Map<String, String> dated = new LinkedHashMap<>(flags);
        dated.putIfAbsent("--date", today.toString());
        values.putAll(EntryFlag.values(dated, Column.PAYMENT));
        Optional<PaymentRequest> wish = shop.contents().payment(form(id.orElse(""), values, Place.NOWHERE));
        return GlyphCheck.report(shop, new Problems()).or(wish::orElseThrow)
                .then(valid -> book.write(open -> new PaymentBooking(shop, today).store(id, valid, open)))
                .map(booked -> new PaymentSheet(booked.entry(), booked.reason(), Optional.empty()));
    }

    /** A payment of single values, as a form. */
    public static Form form(String id, Map<Column, GivenValue> values, Place place) {
        Tree.Branch tree = ValueTree.over(ValueTree.empty(place), values);
        Map<String, Tree> entries = new LinkedHashMap<>();
        entries.put("format", Tree.Leaf.of("1", Tree.Leaf.Kind.NUMBER, place));
        entries.putAll(tree.entries());
        return new Form(Optional.of(FormKind.PAYMENT), id, new Tree.Branch(entries, tree.keys(), place));
    }

    /**
     * Takes what of a payment is on account for bills.
     *
     * @param bills as the flag has them; empty for those that are likely meant
     * @param day from which they count as paid; empty for today
     */
    public Validated<PaymentSheet> allot(String id, Optional<String> bills, Optional<LocalDate> day) {
        ShopFolder shop = BookForms.shop(book);
        return GlyphCheck.report(shop, new Problems()).or(() -> id).then(valid -> book.write(open -> standing(open, id)
                .then(entry -> named(shop, entry, bills).then(
                        named -> new PaymentBooking(shop, today).allot(entry, day.orElse(today), named, open)))))
                .map(booked -> new PaymentSheet(booked.entry(), booked.reason(), Optional.empty()));
    }

    private static Validated<Optional<List<PaymentRequest.Named>>> named(ShopFolder shop, PaymentEntry entry,
            Optional<String> bills) {
        if (bills.isEmpty()) {
            return Validated.valid(Optional.empty());
        }
        Map<Column, GivenValue> values = EntryFlag.values(Map.of("--for", bills.get(), "--date",
                entry.day().toString()), Column.PAYMENT);
        values.put(Column.LISTED_PAYMENT.getFirst(), new GivenValue(entry.customer(), Place.NOWHERE));
        values.put(Column.LISTED_PAYMENT.get(1), new GivenValue("1", Place.NOWHERE));
        Optional<PaymentRequest> read = shop.contents().payment(form(entry.id(), values, Place.NOWHERE));
        return GlyphCheck.report(shop, new Problems()).or(() -> read.orElseThrow().bills());
    }

    /**
     * Takes a payment back that was noted by mistake; the book keeps it, and why.
     *
     * @param reason not blank
     */
    public Validated<PaymentSheet> withdraw(String id, String reason) {
        if (reason.isBlank()) {
            return Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "no reason is given",
                    "--reason, which the book keeps"));
        }
        return book.write(open -> known(open, id).then(entry -> open.receiving().withdraw(entry, reason)
                .map(done -> new PaymentSheet(entry, Optional.empty(), Optional.of(done)))));
    }

    public Validated<PaymentSheet> show(String id) {
        return book.read(open -> known(open, id)
                .map(entry -> new PaymentSheet(entry, Optional.empty(), open.accounts().withdrawal(id))));
    }

    /** The payments that have a text somewhere, by day; all for no letters. */
    public Validated<PaymentList> list(String text) {
        return book.read(open -> Validated.valid(new PaymentList(open.accounts().payments().stream()
                .map(entry -> new PaymentSheet(entry, Optional.empty(), open.accounts().withdrawal(entry.id())))
                .toList()).with(text)));
    }

    private static Validated<PaymentEntry> known(Reading open, String id) {
        return open.accounts().payment(id).map(Validated::valid)
                .orElseGet(() -> Validated.invalid(UnknownName.name("payment", id,
                        open.accounts().payments().stream().map(PaymentEntry::id).toList(),
                        "see: icequill payment list")));
    }

    private static Validated<PaymentEntry> standing(Reading open, String id) {
        return known(open, id).then(entry -> open.accounts().withdrawal(id)
                .map(back -> Validated.<PaymentEntry>invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        back.told("payment", id), "a payment that stands")))
                .orElse(Validated.valid(entry)));
    }
}
