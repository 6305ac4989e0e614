package icequill.ledger.entries;

import icequill.ledger.entries.PaymentEntry.Share;
import icequill.ledger.store.Minor;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Payments as rows. */
record PaymentRows(Handle handle) {

    private static final String SELECT = """
            SELECT p.id, p.customer_id, p.paid_on, p.currency, p.amount_minor, p.way, p.went_back, p.reference
            FROM payment p
            """;
    private static final String STANDING = "NOT EXISTS (SELECT 1 FROM payment_withdrawn w WHERE w.payment_id = p.id)";

    private record Row(String id, String customerId, LocalDate paidOn, String currency, long amountMinor, String way,
            boolean wentBack, Optional<String> reference) {}

    private record Part(String bill, LocalDate countsFrom, long amountMinor) {}

    Optional<PaymentEntry> find(String id) {
        return handle.createQuery(SELECT + "WHERE p.id = :id").bind("id", id).mapTo(Row.class).findOne()
                .map(this::entry);
    }

    List<PaymentEntry> all() {
        return handle.createQuery(SELECT + "ORDER BY p.paid_on, p.noted_at, p.id").mapTo(Row.class).list().stream()
                .map(this::entry).toList();
    }

    /** Those of some customers, or for some of their bills, that stand. */
    List<PaymentEntry> standing(List<String> customers) {
        return handle.createQuery(SELECT + "WHERE (p.customer_id IN (<customers>) OR EXISTS (SELECT 1 FROM"
                + " payment_share s JOIN paper b ON b.number = s.bill WHERE s.payment_id = p.id AND b.customer_id IN"
                + " (<customers>))) AND " + STANDING + " ORDER BY p.paid_on, p.noted_at, p.id")
                .bindList("customers", customers).mapTo(Row.class).list().stream().map(this::entry).toList();
    }

    List<PaymentEntry> ofBill(String number) {
        return handle.createQuery(SELECT + "WHERE EXISTS (SELECT 1 FROM payment_share s WHERE s.payment_id = p.id"
                + " AND s.bill = :bill) AND " + STANDING + " ORDER BY p.paid_on, p.noted_at, p.id")
                .bind("bill", number).mapTo(Row.class).list().stream().map(this::entry).toList();
    }

    List<PaymentEntry> of(String customer) {
        return handle.createQuery(SELECT + "WHERE p.customer_id = :customer ORDER BY p.paid_on, p.noted_at, p.id")
                .bind("customer", customer).mapTo(Row.class).list().stream().map(this::entry).toList();
    }

    Optional<Withdrawal> withdrawal(String id) {
        return handle.createQuery("SELECT withdrawn_at, reason FROM payment_withdrawn WHERE payment_id = :id")
                .bind("id", id).mapTo(Withdrawal.class).findOne();
    }

    void insert(PaymentEntry payment, Instant now) {
        handle.createUpdate("INSERT INTO payment (id, customer_id, paid_on, currency, amount_minor, way, went_back,"
                + " reference, noted_at) VALUES (:id, :customer, :day, :currency, :amount, :way, :isBack, :reference,"
                + " :now)").bindMethods(payment).bind("currency", payment.amount().getCurrency().getCurrencyCode())
                .bind("now", now).execute();
        insert(payment.id(), 0, payment.shares());
    }

    /** @param before how many there are already */
    void insert(String payment, int before, List<Share> shares) {
        for (int i = 0; i < shares.size(); i++) {
            handle.createUpdate("INSERT INTO payment_share (payment_id, position, bill, counts_from, amount_minor)"
                    + " VALUES (:payment, :position, :bill, :day, :amount)").bindMethods(shares.get(i))
                    .bind("payment", payment).bind("position", before + i).execute();
        }
    }

    void withdraw(String id, String reason, Instant now) {
        handle.createUpdate("INSERT INTO payment_withdrawn (payment_id, withdrawn_at, reason)"
                + " VALUES (:id, :now, :reason)").bind("id", id).bind("now", now).bind("reason", reason)
                .execute();
    }

    /** The database lets this happen only where the customer is forgotten. */
    void forget(String id) {
        handle.execute("UPDATE payment SET reference = NULL WHERE id = ?", id);
        handle.execute("UPDATE payment_withdrawn SET reason = '' WHERE payment_id = ?", id);
    }

    private PaymentEntry entry(Row row) {
        return new PaymentEntry(row.id(), row.customerId(), row.paidOn(),
                Minor.stored(row.amountMinor(), row.currency()),
                row.way(), row.wentBack(), row.reference(),
                handle.createQuery("SELECT bill, counts_from, amount_minor FROM payment_share"
                        + " WHERE payment_id = :id ORDER BY position").bind("id", row.id()).mapTo(Part.class)
                        .map(part -> new Share(part.bill(), part.countsFrom(),
                                Minor.stored(part.amountMinor(), row.currency())))
                        .list());
    }
}
