package icequill.ledger.entries;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jdbi.v3.core.Handle;

/** Payments of the book, and who has one account with whom. */
public record Accounts(Handle handle) {

    public Optional<PaymentEntry> payment(String id) {
        return rows().find(id);
    }

    /** By day. */
    public List<PaymentEntry> payments() {
        return rows().all();
    }

    /** Of some customers, or for bills of theirs: those that stand, by day. */
    public List<PaymentEntry> standing(List<String> customers) {
        return rows().standing(customers);
    }

    /** Those that stand and have a share for a bill, by day. */
    public List<PaymentEntry> paymentsOf(String bill) {
        return rows().ofBill(bill);
    }

    /** Empty for a payment that stands. */
    public Optional<Withdrawal> withdrawal(String payment) {
        return rows().withdrawal(payment);
    }

    /** What is known of a customer's account besides. */
    public Optional<AccountEntry> account(String customer) {
        return AccountRows.find(handle, customer);
    }

    /** By customer. */
    public List<AccountEntry> accounts() {
        return AccountRows.all(handle);
    }

    /**
     * Who pays what is billed to a customer: himself, or the account that he belongs to where nobody is named for him. One who was merged is found
     * as who he is now.
     */
    public Validated<CustomerEntry> payer(String customer) {
        String standing = MergeRows.ofCustomers(handle).into(customer).orElse(customer);
        return new CustomerRows(handle).find(standing).<Validated<CustomerEntry>>map(Validated::valid)
                .orElseGet(() -> Validated.invalid(new Problem(Code.UNKNOWN_NAME, Place.NOWHERE,
                        "the book has no customer \"" + customer + "\"", "see: icequill customer list")))
                .then(entry -> isBilledHimself(entry) ? Validated.valid(entry) : payer(entry.parent().orElseThrow()));
    }

    private static boolean isBilledHimself(CustomerEntry entry) {
        return entry.parent().isEmpty() || !entry.customer().billTo().entries().isEmpty();
    }

    /** The customers whose bills are one account with a payer's: himself, those billed through him, and all who were merged into one of them. */
    public List<String> together(String payer) {
        List<CustomerEntry> all = new CustomerRows(handle).all();
        Set<String> found = new TreeSet<>();
        List<String> next = new ArrayList<>(List.of(payer));
        while (!next.isEmpty()) {
            String id = next.removeLast();
            if (found.add(id)) {
                all.stream().filter(entry -> !isBilledHimself(entry) && entry.parent().filter(id::equals).isPresent())
                        .map(CustomerEntry::id).forEach(next::add);
                next.addAll(MergeRows.ofCustomers(handle).of(id));
            }
        }
        return List.copyOf(found);
    }

    private PaymentRows rows() {
        return new PaymentRows(handle);
    }
}
