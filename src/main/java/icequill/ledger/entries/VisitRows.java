package icequill.ledger.entries;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.reflect.ColumnName;
import org.jdbi.v3.core.statement.Query;

/** Visits as rows. */
public final class VisitRows {

    private static final String SELECT = "SELECT id, site_id, began, ended, purchase_order, state, data FROM visit ";

    /** A row. */
    public record Row(String id, @ColumnName("site_id") String site, ZonedDateTime began, ZonedDateTime ended,
            Optional<String> purchaseOrder, String state, String data) {

        static Row of(VisitEntry visit) {
            return new Row(visit.id(), visit.site(), visit.began(), visit.ended(), visit.purchaseOrder(),
                    VisitRows.state(visit.isPlanned()), visit.data());
        }

        VisitEntry entry() {
            return new VisitEntry(id, site, began, ended, purchaseOrder, state.equals(VisitRows.state(true)), data);
        }
    }

    /** What is said of a visit. */
    private record Said(String id, String data) {}

    /** That a visit is not to be billed. */
    private record Withdrawn(String visitId, Withdrawal withdrawal) {}

    private VisitRows() {
    }

    static Optional<VisitEntry> find(Handle handle, String id) {
        return handle.createQuery(SELECT + "WHERE id = :id").bind("id", id).mapTo(Row.class).findOne().map(Row::entry);
    }

    static List<VisitEntry> all(Handle handle, boolean planned) {
        return handle.createQuery(SELECT + "WHERE state = :state ORDER BY began, id").bind("state", state(planned))
                .mapTo(Row.class).map(Row::entry).list();
    }

    private static String state(boolean planned) {
        return planned ? "planned" : "done";
    }

    static List<VisitEntry> atSite(Handle handle, String site) {
        return handle.createQuery(SELECT + "WHERE site_id = :site ORDER BY began, id").bind("site", site)
                .mapTo(Row.class).map(Row::entry).list();
    }

    /** Those at a site that were done and on whose forms something is sold ahead, by their beginning. */
    static List<VisitEntry> soldAhead(Handle handle, String site) {
        return handle
                .createQuery(SELECT + "WHERE site_id = :site AND state = :state AND data LIKE '%\"block\"%'"
                        + " ORDER BY began, id")
                .bind("site", site).bind("state", state(false)).mapTo(Row.class).map(Row::entry).list();
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
        return query.mapTo(Row.class).map(Row::entry).list();
    }

    /** What those say that somebody asked for, by id. */
    static Map<String, String> askedFor(Handle handle) {
        return handle.createQuery("SELECT id, data FROM visit WHERE data LIKE '%\"asked\"%'").mapTo(Said.class)
                .stream().collect(Collectors.toMap(Said::id, Said::data));
    }

    /** Those that were done and share a moment with the time, and others of the days around it. */
    static List<VisitEntry> around(Handle handle, ZonedDateTime from, ZonedDateTime until) {
        return handle
                .createQuery(SELECT + "WHERE began < :until AND ended > :from AND state = :state ORDER BY began, id")
                .bind("state", state(false))
                .bind("from", from.toLocalDate().minusDays(1).toString())
                .bind("until", until.toLocalDate().plusDays(2).toString()).mapTo(Row.class).map(Row::entry).list();
    }

    static Optional<Withdrawal> withdrawal(Handle handle, String id) {
        return handle.createQuery("SELECT withdrawn_at, reason FROM visit_withdrawn WHERE visit_id = :id")
                .bind("id", id).mapTo(Withdrawal.class).findOne();
    }

    /** All of them, by visit. */
    static Map<String, Withdrawal> withdrawals(Handle handle) {
        return handle.createQuery("SELECT visit_id, withdrawn_at, reason FROM visit_withdrawn").mapTo(Withdrawn.class)
                .stream().collect(Collectors.toMap(Withdrawn::visitId, Withdrawn::withdrawal));
    }

    static void withdraw(Handle handle, String id, String reason, Instant now) {
        handle.createUpdate("INSERT INTO visit_withdrawn (visit_id, withdrawn_at, reason)"
                + " VALUES (:id, :now, :reason)").bind("id", id).bind("now", now).bind("reason", reason)
                .execute();
    }

    /** The database lets this happen only where the visit's customer is forgotten. */
    static void forgetReason(Handle handle, String visit) {
        handle.execute("UPDATE visit_withdrawn SET reason = '' WHERE visit_id = ?", visit);
    }

    public static void insert(Handle handle, VisitEntry visit, Instant now) {
        handle.createUpdate("INSERT INTO visit (id, site_id, began, ended, purchase_order, state, data,"
                + " recorded_at) VALUES (:id, :site, :began, :ended, :purchaseOrder, :state, :data, :now)")
                .bindMethods(Row.of(visit)).bind("now", now).execute();
    }

    static void update(Handle handle, VisitEntry visit, Instant now) {
        handle.createUpdate("UPDATE visit SET site_id = :site, began = :began, ended = :ended,"
                + " purchase_order = :purchaseOrder, state = :state, data = :data, recorded_at = :now WHERE id = :id")
                .bindMethods(Row.of(visit)).bind("now", now).execute();
    }
}
