package icequill.ledger.care;

import icequill.ledger.store.Minor;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import java.math.BigInteger;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.reflect.ColumnName;

/**
 * Holds payments against the bills that they are for: never more than a payment comes to, never more than a bill asks for, in its own currency, from
 * its own day on, and out of the account that it belongs to.
 */
record PaymentCheck(Handle handle, Problems findings) {

    private static final String SHARES = " FROM payment_share s JOIN payment p ON p.id = s.payment_id"
            + " LEFT JOIN paper b ON b.number = s.bill ";
    private static final String STANDS = "NOT EXISTS (SELECT 1 FROM payment_withdrawn w WHERE w.payment_id = p.id)";

    void check() {
        each("SELECT DISTINCT p.id || ' for ' || s.bill" + SHARES + "WHERE b.number IS NULL AND NOT EXISTS ("
                + "SELECT 1 FROM account a WHERE a.data LIKE '%\"' || s.bill || '\"%')"
                + " AND NOT EXISTS (SELECT 1 FROM customer c WHERE c.id = p.customer_id AND c.forgotten_on IS NOT NULL)",
                "a payment is for a bill that the book does not have: ");
        each("SELECT p.id || ' for ' || s.bill" + SHARES + "WHERE b.currency <> p.currency",
                "a payment is for a bill in another currency: ");
        each("SELECT p.id || ' for ' || s.bill" + SHARES
                + "WHERE b.kind <> CASE p.went_back WHEN 1 THEN 'CREDIT_NOTE' ELSE 'INVOICE' END",
                "a payment is for a paper of another kind: ");
        each("SELECT p.id || ' for ' || s.bill" + SHARES
                + "WHERE s.counts_from < p.paid_on OR s.counts_from < b.dated",
                "a share of a payment counts before the payment, or the bill: ");
        each("SELECT payment_id FROM payment_share GROUP BY payment_id"
                + " HAVING min(position) <> 0 OR max(position) <> count(*) - 1",
                "shares are not numbered from 0 without a gap: those of payment ");
        each("SELECT id FROM payment p WHERE EXISTS (SELECT 1 FROM customer_merged m WHERE m.customer_id = p.customer_id)",
                "a payment belongs to a customer who was merged into another: ");
        each("SELECT customer_id FROM account a"
                + " WHERE EXISTS (SELECT 1 FROM customer_merged m WHERE m.customer_id = a.customer_id)",
                "what is known of an account belongs to a customer who was merged into another: ");
        checkSums();
        checkAccounts();
    }

    private void checkSums() {
        handle.createQuery("SELECT p.id AS name, p.currency, p.amount_minor AS most, p.went_back,"
                + " sum(s.amount_minor) AS shares" + SHARES
                + "GROUP BY p.id, p.currency, p.amount_minor, p.went_back").mapTo(Shared.class).list().stream()
                .filter(payment -> payment.isBack()
                        ? !payment.shares().equals(payment.most())
                        : payment.isTooMuch())
                .forEach(payment -> found("the shares of payment " + payment.name() + " come to "
                        + payment.text(payment.shares()) + ", not " + (payment.isBack() ? "" : "at most ")
                        + payment.text(payment.most())));
        handle.createQuery("SELECT s.bill AS name, b.currency, b.gross_minor AS most, 0 AS went_back,"
                + " sum(s.amount_minor) AS shares" + SHARES + "WHERE b.gross_minor IS NOT NULL AND " + STANDS
                + " GROUP BY s.bill, b.currency, b.gross_minor").mapTo(Shared.class).list().stream()
                .filter(Shared::isTooMuch)
                .forEach(bill -> found("payments for " + bill.name() + " come to " + bill.text(bill.shares())
                        + ", but it says " + bill.text(bill.most())));
    }

    /** What shares come to, and the most that they may. */
    private record Shared(String name, String currency, BigInteger most,
            @ColumnName("went_back") boolean isBack, BigInteger shares) {

        boolean isTooMuch() {
            return shares.compareTo(most) > 0;
        }

        String text(BigInteger minor) {
            return Minor.text(minor, currency);
        }
    }

    /** A payer and whose bill he paid. */
    private record Pair(String payer, String billed) {}

    private void checkAccounts() {
        handle.createQuery("SELECT DISTINCT p.customer_id AS payer, b.customer_id AS billed" + SHARES
                + "WHERE b.customer_id IS NOT NULL AND b.customer_id <> p.customer_id ORDER BY 1, 2")
                .mapTo(Pair.class).list().stream().filter(pair -> !isOneAccount(pair))
                .forEach(pair -> found("payments of " + pair.payer() + " are for bills of " + pair.billed()
                        + ", whose account is another"));
    }

    /** By now, or as the trail has it for an earlier day; of whom was forgotten nobody can tell. */
    private boolean isOneAccount(Pair pair) {
        Set<String> payers = above(pair.payer());
        Set<String> billed = above(pair.billed());
        return payers.stream().anyMatch(billed::contains) || payers.stream().anyMatch(id -> wasBelow(pair.billed(), id))
                || handle.createQuery("SELECT 1 FROM customer WHERE id IN (:one, :other) AND forgotten_on IS NOT NULL")
                        .bind("one", pair.payer()).bind("other", pair.billed()).mapTo(Integer.class).findFirst()
                        .isPresent();
    }

    private boolean wasBelow(String customer, String parent) {
        return handle.createQuery("SELECT 1 FROM trail t JOIN trail_value v ON v.trail_number = t.number"
                + " WHERE t.kind = 'CUSTOMER' AND t.entry = :customer AND v.data LIKE :parent")
                .bind("customer", customer).bind("parent", "%\"parent\":\"" + parent + "\"%").mapTo(Integer.class)
                .findFirst().isPresent();
    }

    /** A customer, whoever he was merged into, and the accounts above. */
    private Set<String> above(String customer) {
        Set<String> all = new HashSet<>();
        Optional<String> next = Optional.of(customer);
        while (next.filter(all::add).isPresent()) {
            next = handle.createQuery("SELECT coalesce((SELECT into_id FROM customer_merged WHERE customer_id = :id),"
                    + " (SELECT parent_id FROM customer WHERE id = :id))").bind("id", next.get())
                    .mapTo(String.class).findOne();
        }
        return all;
    }

    private void each(String query, String message) {
        handle.createQuery(query).mapTo(String.class).forEach(name -> found(message + name));
    }

    private void found(String message) {
        findings.add(Code.BOOK_DAMAGED, Place.NOWHERE, message, "the row from a backup");
    }
}
