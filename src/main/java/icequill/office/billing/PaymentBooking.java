package icequill.office.billing;

import icequill.account.Allotment;
import icequill.account.PaymentRequest;
import icequill.account.PaymentRequest.Named;
import icequill.account.Way;
import icequill.answer.ImportResult.State;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.entries.PaymentEntry.Share;
import icequill.money.Amounts;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookAccounts;
import icequill.shop.EntryId;
import icequill.shop.ShopFolder;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * Notes payments in the book, each shared out over bills that are open. What was noted is never another: it is withdrawn, or more of it is
 * taken for bills.
 *
 * @param shop whose settings are valid
 */
public record PaymentBooking(ShopFolder shop, LocalDate today) {

    /**
     * A payment that stands in the book.
     *
     * @param state what it was to the book before
     * @param reason why it was taken to be for its bills; empty where that was said
     */
    public record Booked(PaymentEntry entry, State state, Optional<Allotment.Reason> reason) {}

    /**
     * Notes a payment.
     *
     * @param id empty to make one of the customer and the day
     */
    public Validated<Booked> store(Optional<String> id, PaymentRequest wish, Transaction open) {
        Optional<PaymentEntry> known = id.flatMap(open.accounts()::payment);
        return known.map(entry -> again(entry, wish, open)).orElseGet(() -> first(id, wish, open));
    }

    private Validated<Booked> first(Optional<String> id, PaymentRequest wish, Transaction open) {
        Problems problems = new Problems();
        id.flatMap(name -> EntryId.problem(name, wish.place())).ifPresent(problems::add);
        if (wish.day().isAfter(today)) {
            problems.add(Code.OUT_OF_RANGE, wish.place(), "paid on " + wish.day() + ", but today is " + today,
                    "today or an earlier day");
        }
        BookAccounts accounts = accounts(open);
        Optional<CustomerEntry> payer = problems.take(at(accounts.payer(wish.customer()), wish));
        payer.flatMap(known -> noted(known.id(), wish, open)).ifPresent(problems::add);
        Optional<PaymentShares.Shared> shared = payer
                .flatMap(known -> problems.take(at(accounts.of(known, false), wish)))
                .flatMap(found -> problems.take(new PaymentShares(found, open).of(wish)));
        return problems.or(() -> new PaymentEntry(id.orElseGet(() -> free(payer.orElseThrow().id(), wish, open)),
                payer.orElseThrow().id(), wish.day(), wish.amount(), wish.way().name(), wish.isBack(),
                wish.reference(), shared.orElseThrow().entries()))
                .then(open.receiving()::record)
                .map(entry -> new Booked(entry, State.NEW, shared.orElseThrow().reason()));
    }

    private BookAccounts accounts(Reading open) {
        return new BookAccounts(shop, open, shop.shop().map(Shop::currency).orElseThrow());
    }

    /** With the place of the payment, where a problem has none. */
    private static <T> Validated<T> at(Validated<T> found, PaymentRequest wish) {
        return found instanceof Validated.Invalid<T>(List<Problem> problems)
                ? new Validated.Invalid<>(problems.stream().map(problem -> problem.place().file().isEmpty()
                        ? new Problem(problem.code(), wish.place(), problem.message(), problem.allowed())
                        : problem).toList())
                : found;
    }

    /** The same money noted a second time, under another name. */
    private static Optional<Problem> noted(String payer, PaymentRequest wish, Reading open) {
        return open.accounts().standing(List.of(payer)).stream()
                .filter(other -> other.customer().equals(payer) && isSame(other, wish)).findFirst()
                .map(other -> new Problem(Code.ALREADY_EXISTS, wish.place(), Amounts.plain(wish.amount()) + " of "
                        + wish.day() + " is noted already, as payment \"" + other.id() + "\"",
                        "if it is another: a reference of its own"));
    }

    private static boolean isSame(PaymentEntry entry, PaymentRequest wish) {
        return entry.day().equals(wish.day()) && entry.amount().isEqualTo(wish.amount())
                && entry.way().equals(wish.way().name()) && entry.isBack() == wish.isBack()
                && entry.reference().equals(wish.reference());
    }

    /** An id that no payment has. */
    private static String free(String payer, PaymentRequest wish, Reading open) {
        String day = "-" + wish.day();
        String begin = payer.substring(0, Math.min(payer.length(), 40)) + day;
        return Stream.iterate(1, count -> count + 1).map(count -> count == 1 ? begin : begin + "-" + count)
                .filter(name -> open.accounts().payment(name).isEmpty()).findFirst().orElseThrow();
    }

    /** A payment that the book has under this name: the same, or with more bills that it is for. */
    private Validated<Booked> again(PaymentEntry entry, PaymentRequest wish, Transaction open) {
        Optional<Problem> withdrawn = open.accounts().withdrawal(entry.id())
                .map(before -> new Problem(Code.NOT_ALLOWED, wish.place(), before.told("payment", entry.id()),
                        "a payment of another id"));
        if (withdrawn.isPresent()) {
            return Validated.invalid(withdrawn.get());
        }
        boolean isOfSame = wish.customer().equals(entry.customer()) || open.entries().mergedInto(entry.customer())
                .stream().map(CustomerEntry::id).anyMatch(wish.customer()::equals);
        List<Named> more = wish.bills().orElse(List.of()).stream().filter(named -> isMore(entry, named)).toList();
        boolean holds = wish.bills().isEmpty() || !wish.bills().get().isEmpty() || entry.shares().isEmpty();
        if (!isOfSame || !isSame(entry, wish) || !holds || more.stream().anyMatch(named -> isHeld(entry, named))) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, wish.place(),
                    "payment \"" + entry.id() + "\" was noted otherwise, and what was noted is not changed",
                    "icequill payment withdraw " + entry.id() + " --reason ..., and a payment of another id"));
        }
        return more.isEmpty()
                ? Validated.valid(new Booked(entry, State.SAME, Optional.empty()))
                : allotted(entry, with(wish, more), open);
    }

    private static PaymentRequest with(PaymentRequest wish, List<Named> bills) {
        return new PaymentRequest(wish.customer(), wish.day(), wish.amount(), wish.way(), wish.isBack(),
                wish.reference(), Optional.of(bills), wish.place());
    }

    /** Whether the payment does not say so already. */
    private static boolean isMore(PaymentEntry entry, Named named) {
        return entry.shares().stream().filter(share -> share.bill().equals(named.number()))
                .noneMatch(share -> named.amount().map(share.amount()::isEqualTo).orElse(true)
                        && named.day().map(share.day()::equals).orElse(true));
    }

    private static boolean isHeld(PaymentEntry entry, Named named) {
        return entry.shares().stream().map(Share::bill).anyMatch(named.number()::equals);
    }

    /**
     * Takes what is on account of a payment for bills.
     *
     * @param bills empty to take those that are likely meant
     */
    public Validated<Booked> allot(PaymentEntry entry, LocalDate day, Optional<List<Named>> bills, Transaction open) {
        PaymentRequest wish = new PaymentRequest(entry.customer(), day, entry.amount(), Way.OTHER,
                entry.isBack(), Optional.empty(), bills, Place.NOWHERE);
        return allotted(entry, wish, open);
    }

    private Validated<Booked> allotted(PaymentEntry entry, PaymentRequest wish, Transaction open) {
        MonetaryAmount left = onAccount(entry);
        BookAccounts accounts = accounts(open);
        return accounts.payer(entry.customer()).then(payer -> accounts.of(payer, false))
                .then(found -> new PaymentShares(found, open).of(left, wish))
                .then(shared -> shared.shares().isEmpty()
                        ? Validated.invalid(new Problem(Code.NOT_ALLOWED, wish.place(),
                                left.isZero()
                                        ? "nothing of payment \"" + entry.id() + "\" is on account"
                                        : "no bill is open that it could be for",
                                "a payment with money on account, and a bill that is open"))
                        : Validated.valid(new Booked(open.receiving().allot(entry, shared.entries()), State.CHANGED,
                                shared.reason())));
    }

    /** What of a payment is for no bill. */
    static MonetaryAmount onAccount(PaymentEntry entry) {
        return entry.amount().subtract(Amounts.sum(entry.shares().stream().map(Share::amount).toList(),
                entry.amount().getCurrency()));
    }
}
