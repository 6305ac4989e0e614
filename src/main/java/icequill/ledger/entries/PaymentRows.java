package icequill.ledger.entries;

import icequill.ledger.entries.PaymentEntry.Share;
import icequill.ledger.store.Column;
import icequill.ledger.store.Minor;
import icequill.money.MinorUnits;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.RowView;

/** Payments as rows. */
record PaymentRows(Handle handle) {

    private static final String SELECT = """
            SELECT p.id, p.customer_id, p.paid_on, p.currency, p.amount_minor, p.way, p.went_back, p.reference
            FROM payment p
            """;
    private static final String STANDING = "NOT EXISTS (SELECT 1 FROM payment_withdrawn w WHERE w.payment_id = p.id)";

    Optional<PaymentEntry> find(String id) {
        return handle.createQuery(SELECT + "WHERE p.id = :id").bind("id", id).map(this::read).findOne();
    }

    List<PaymentEntry> all() {
        return handle.createQuery(SELECT + "ORDER BY p.paid_on, p.noted_at, p.id").map(this::read).list();
    }

    /** Those of some customers, or for some of their bills, that stand. */
    List<PaymentEntry> standing(List<String> customers) {
        return handle.createQuery(SELECT + "WHERE (p.customer_id IN (<customers>) OR EXISTS (SELECT 1 FROM"
                + " payment_share s JOIN paper b ON b.number = s.bill WHERE s.payment_id = p.id AND b.customer_id IN"
                + " (<customers>))) AND " + STANDING + " ORDER BY p.paid_on, p.noted_at, p.id")
                .bindList("customers", customers).map(this::read).list();
    }

    List<PaymentEntry> ofBill(String number) {
        return handle.createQuery(SELECT + "WHERE EXISTS (SELECT 1 FROM payment_share s WHERE s.payment_id = p.id"
                + " AND s.bill = :bill) AND " + STANDING + " ORDER BY p.paid_on, p.noted_at, p.id")
                .bind("bill", number).map(this::read).list();
    }

    List<PaymentEntry> of(String customer) {
        return handle.createQuery(SELECT + "WHERE p.customer_id = :customer ORDER BY p.paid_on, p.noted_at, p.id")
                .bind("customer", customer).map(this::read).list();
    }

    Optional<Withdrawal> withdrawal(String id) {
        return handle.createQuery("SELECT withdrawn_at, reason FROM payment_withdrawn WHERE payment_id = :id")
                .bind("id", id)
                .map(row -> new Withdrawal(Column.moment(row, "withdrawn_at"), Column.text(row, "reason"))).findOne();
    }

    void insert(PaymentEntry payment, Instant now) {
        handle.createUpdate("INSERT INTO payment (id, customer_id, paid_on, currency, amount_minor, way, went_back,"
                + " reference, noted_at) VALUES (:id, :customer, :day, :currency, :amount, :way, :back, :reference,"
                + " :now)").bind("id", payment.id()).bind("customer", payment.customer())
                .bind("day", payment.day().toString())
                .bind("currency", payment.amount().getCurrency().getCurrencyCode())
                .bind("amount", MinorUnits.of(payment.amount())).bind("way", payment.way())
                .bind("back", payment.isBack() ? 1 : 0).bind("reference", payment.reference())
                .bind("now", now.toString()).execute();
        insert(payment.id(), 0, payment.shares());
    }

    /** @param before how many there are already */
    void insert(String payment, int before, List<Share> shares) {
        for (int i = 0; i < shares.size(); i++) {
            Share share = shares.get(i);
            handle.createUpdate("INSERT INTO payment_share (payment_id, position, bill, counts_from, amount_minor)"
                    + " VALUES (:payment, :position, :bill, :day, :amount)").bind("payment", payment)
                    .bind("position", before + i).bind("bill", share.bill()).bind("day", share.day().toString())
                    .bind("amount", MinorUnits.of(share.amount())).execute();
        }
    }

    void withdraw(String id, String reason, Instant now) {
        handle.createUpdate("INSERT INTO payment_withdrawn (payment_id, withdrawn_at, reason)"
                + " VALUES (:id, :now, :reason)").bind("id", id).bind("now", now.toString()).bind("reason", reason)
                .execute();
    }

    /** The database lets this happen only where the customer is forgotten. */
    void forget(String id) {
        handle.execute("UPDATE payment SET reference = NULL WHERE id = ?", id);
        handle.execute("UPDATE payment_withdrawn SET reason = '' WHERE payment_id = ?", id);
    }

    private PaymentEntry read(RowView row) {
        String id = Column.text(row, "id");
        String currency = Column.text(row, "currency");
        List<Share> shares = handle.createQuery("SELECT bill, counts_from, amount_minor FROM payment_share"
                + " WHERE payment_id = :id ORDER BY position").bind("id", id)
                .map(share -> new Share(Column.text(share, "bill"),
                        Column.day("counts_from", Column.text(share, "counts_from")),
                        Minor.stored(Column.units(share, "amount_minor"), currency)))
                .list();
        return new PaymentEntry(id, Column.text(row, "customer_id"),
                Column.day("paid_on", Column.text(row, "paid_on")),
                Minor.stored(Column.units(row, "amount_minor"), currency), Column.text(row, "way"),
                Column.whole(row, "went_back") == 1, Column.mayBe(row, "reference"), shares);
    }
}
