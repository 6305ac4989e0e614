package icequill.shop;

import icequill.account.Account;
import icequill.account.AccountNotes;
import icequill.account.AccountRules;
import icequill.account.ReminderTerms;
import icequill.account.Standing;
import icequill.ledger.Reading;
import icequill.papers.AccountSnapshot;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.List;

/** Works customers' accounts out of the book. */
public record AccountLoader(ShopBook book) {

    /** The account of a customer as it stands at the end of a day; one report holds all that is wrong with it. */
    public Validated<AccountSnapshot> of(FormName customer, LocalDate day) {
        return switch (customer) {
        case FormName.InBook(String id) -> of(id, day);
        case FormName.InFile file -> notInBook(file);
        case FormName.InHand hand -> notInBook(hand);
        };
    }

    private static Validated<AccountSnapshot> notInBook(FormName form) {
        return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.ofFile(form.text()),
                "an account is worked out of the book, not of a file",
                "the id of a customer; --with " + form.text() + " lays the form of an account over the book"));
    }

    private Validated<AccountSnapshot> of(String customer, LocalDate day) {
        ShopFolder folder = BookForms.shop(book);
        return GlyphCheck.report(folder, new Problems()).or(() -> folder.shop().orElseThrow())
                .then(shop -> book.read(open -> of(folder, shop, open, customer, day)));
    }

    private static Validated<AccountSnapshot> of(ShopFolder folder, Shop shop, Reading open, String customer,
            LocalDate day) {
        BookAccounts accounts = new BookAccounts(folder, open, shop.currency());
        return accounts.payer(customer).then(payer -> accounts.of(payer, true))
                .then(found -> valid(found.account()).or(() -> found))
                .then(found -> BookForms.customer(open, found.payer()).then(payer -> payer.addressed().at(day)
                        .map(Validated::valid)
                        .orElseGet(() -> Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE,
                                "nobody is billed for " + payer.name() + " on " + day,
                                "a billTo that covers the day")))
                        .map(billTo -> new AccountSnapshot(shop, billTo, payer.language(), payer.vendorNumber(),
                                found.payer().id(), reminded(found.notes()), Standing.of(found.account(), day),
                                terms(folder, found.notes()), found.apart()))));
    }

    private static Problems valid(Account account) {
        Problems problems = new Problems();
        problems.addAll(AccountRules.problems(account));
        return problems;
    }

    private static List<LocalDate> reminded(List<AccountNotes> notes) {
        return notes.stream().flatMap(note -> note.reminded().stream()).toList();
    }

    private static ReminderTerms terms(ShopFolder folder, List<AccountNotes> notes) {
        return notes.stream().flatMap(note -> note.late().stream()).findFirst().map(folder.reminders()::with)
                .orElseGet(folder::reminders);
    }
}
