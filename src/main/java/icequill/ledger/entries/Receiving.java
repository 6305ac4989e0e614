package icequill.ledger.entries;

import icequill.ledger.entries.PaymentEntry.Share;
import icequill.ledger.trail.Trail;
import icequill.ledger.trail.TrailEvent;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.time.Instant;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Notes payments, and what the shop knows of accounts, and leaves a trail. Whether a share is open is for the caller to know. */
public final class Receiving {

    private final Handle handle;
    private final Entries entries;
    private final PaymentRows rows;
    private final Instant now;
    private final Trail trail;

    public Receiving(Handle handle, Instant now, Trail trail) {
        this.handle = handle;
        this.entries = new Entries(handle);
        this.rows = new PaymentRows(handle);
        this.now = now;
        this.trail = trail;
    }

    /** A payment of an id that no other has. */
    public Validated<PaymentEntry> record(PaymentEntry payment) {
        Problems problems = new Problems();
        if (rows.find(payment.id()).isPresent()) {
            problems.add(Code.ALREADY_EXISTS, Place.NOWHERE,
                    "the book has a payment \"" + payment.id() + "\" already", "another id");
        }
        problems.take(standing(payment.customer()));
        return problems.or(() -> {
            Noted.of(payment, TrailEvent.RECORDED).in(trail, () -> rows.insert(payment, now));
            return payment;
        });
    }

    /** Takes further bills to be paid by what is on account. */
    public PaymentEntry allot(PaymentEntry payment, List<Share> shares) {
        Noted.of(payment, TrailEvent.CHANGED).in(trail,
                () -> rows.insert(payment.id(), payment.shares().size(), shares));
        return rows.find(payment.id()).orElseThrow();
    }

    /** Takes back a payment that was recorded by mistake; the book keeps it, and why. */
    public Validated<Withdrawal> withdraw(PaymentEntry payment, String reason) {
        Problems problems = new Problems();
        rows.withdrawal(payment.id()).ifPresent(before -> problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                before.told("payment", payment.id()), ""));
        return problems.or(() -> {
            Noted.of(payment, TrailEvent.WITHDRAWN).in(trail, () -> rows.withdraw(payment.id(), reason, now));
            return new Withdrawal(now, reason);
        });
    }

    /** What is known of a customer's account, in place of what was. */
    public Validated<AccountEntry> note(AccountEntry account) {
        boolean isNew = AccountRows.find(handle, account.customer()).isEmpty();
        return standing(account.customer()).map(stands -> {
            Noted.of(account, isNew ? TrailEvent.ADDED : TrailEvent.CHANGED).in(trail,
                    () -> AccountRows.store(handle, account, now));
            return account;
        });
    }

    /** A customer whom the book has not forgotten. */
    private Validated<CustomerEntry> standing(String customer) {
        return entries.customer(customer).then(entry -> entry.forgotten().isEmpty()
                ? Validated.valid(entry)
                : Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "customer \"" + customer + "\" was forgotten on " + entry.forgotten().get(), "another id")));
    }
}
