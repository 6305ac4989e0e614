package icequill.ledger.entries;

import icequill.ledger.store.Column;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.RowView;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.Update;

/** Visits as rows. */
public final class VisitRows {

    private static final String SELECT = "SELECT id, site_id, began, ended, purchase_order, state, data FROM visit ";

    private VisitRows() {
    }

    static Optional<VisitEntry> find(Handle handle, String id) {
        return handle.createQuery(SELECT + "WHERE id = :id").bind("id", id).map(VisitRows::read)
                .findOne();
    }

    static List<VisitEntry> all(Handle handle, boolean planned) {
        return handle.createQuery(SELECT + "WHERE state = :state ORDER BY began, id").bind("state", state(planned))
                .map(VisitRows::read).list();
    }

    private static String state(boolean planned) {
        return planned ? "planned" : "done";
    }

    static List<VisitEntry> atSite(Handle handle, String site) {
        return handle.createQuery(SELECT + "WHERE site_id = :site ORDER BY began, id").bind("site", site)
                .map(VisitRows::read).list();
    }

    /** Planned and done, by their beginning. */
    static List<VisitEntry> find(Handle handle, VisitQuestion question) {
        StringBuilder where = new StringBuilder("WHERE 1 = 1");
        if (!question.sites().isEmpty()) {
            where.append(" AND site_id IN (<sites>)");
        }
        question.from().ifPresent(day -> where.append(" AND began >= :from"));
        question.until().ifPresent(day -> where.append(" AND began < :beyond"));
        Query query = handle.createQuery(SELECT + where + " ORDER BY began, id");
        if (!question.sites().isEmpty()) {
            query.bindList("sites", question.sites());
        }
        question.from().ifPresent(day -> query.bind("from", day.toString()));
        question.until().ifPresent(day -> query.bind("beyond", day.plusDays(1).toString()));
        return query.map(VisitRows::read).list();
    }

    /** What those say that somebody asked for, by id. */
    static Map<String, String> askedFor(Handle handle) {
        Map<String, String> all = new HashMap<>();
        handle.createQuery("SELECT id, data FROM visit WHERE data LIKE '%\"asked\"%'")
                .map(row -> Map.entry(Column.text(row, "id"), Column.text(row, "data")))
                .forEach(one -> all.put(one.getKey(), one.getValue()));
        return all;
    }

    /** Those that were done and share a moment with the time, and others of the days around it. */
    static List<VisitEntry> around(Handle handle, ZonedDateTime from, ZonedDateTime until) {
        return handle
                .createQuery(SELECT + "WHERE began < :until AND ended > :from AND state = :state ORDER BY began, id")
                .bind("state", state(false))
                .bind("from", from.toLocalDate().minusDays(1).toString())
                .bind("until", until.toLocalDate().plusDays(2).toString()).map(VisitRows::read).list();
    }

    static Optional<Withdrawal> withdrawal(Handle handle, String id) {
        return handle.createQuery("SELECT withdrawn_at, reason FROM visit_withdrawn WHERE visit_id = :id")
                .bind("id", id).map(VisitRows::withdrawal).findOne();
    }

    /** All of them, by visit. */
    static Map<String, Withdrawal> withdrawals(Handle handle) {
        Map<String, Withdrawal> all = new HashMap<>();
        handle.createQuery("SELECT visit_id, withdrawn_at, reason FROM visit_withdrawn")
                .map(row -> Map.entry(Column.text(row, "visit_id"), withdrawal(row)))
                .forEach(one -> all.put(one.getKey(), one.getValue()));
        return all;
    }

    private static Withdrawal withdrawal(RowView row) {
        return new Withdrawal(Instant.parse(Column.text(row, "withdrawn_at")), Column.text(row, "reason"));
    }

    static void withdraw(Handle handle, String id, String reason, Instant now) {
        handle.createUpdate("INSERT INTO visit_withdrawn (visit_id, withdrawn_at, reason)"
                + " VALUES (:id, :now, :reason)").bind("id", id).bind("now", now.toString()).bind("reason", reason)
                .execute();
    }

    /** The database lets this happen only where the visit's customer is forgotten. */
    static void forgetReason(Handle handle, String visit) {
        handle.execute("UPDATE visit_withdrawn SET reason = '' WHERE visit_id = ?", visit);
    }

    public static void insert(Handle handle, VisitEntry visit, Instant now) {
        bound(handle.createUpdate("INSERT INTO visit (id, site_id, began, ended, purchase_order, state, data,"
                + " recorded_at) VALUES (:id, :site, :began, :ended, :purchaseOrder, :state, :data, :now)"), visit, now)
                .execute();
    }

    static void update(Handle handle, VisitEntry visit, Instant now) {
        bound(handle.createUpdate("UPDATE visit SET site_id = :site, began = :began, ended = :ended,"
                + " purchase_order = :purchaseOrder, state = :state, data = :data, recorded_at = :now WHERE id = :id"),
                visit, now)
                .execute();
    }

    private static Update bound(Update statement, VisitEntry visit, Instant now) {
        return statement.bind("id", visit.id()).bind("site", visit.site()).bind("began", visit.began().toString())
                .bind("ended", visit.ended().toString()).bind("purchaseOrder", visit.purchaseOrder())
                .bind("state", state(visit.isPlanned())).bind("data", visit.data()).bind("now", now.toString());
    }

    static VisitEntry read(RowView row) {
        return new VisitEntry(Column.text(row, "id"), Column.text(row, "site_id"),
                Column.made("began", () -> ZonedDateTime.parse(Column.text(row, "began"))),
                Column.made("ended", () -> ZonedDateTime.parse(Column.text(row, "ended"))),
                Column.mayBe(row, "purchase_order"), Column.text(row, "state").equals(state(true)),
                Column.text(row, "data"));
    }
}
