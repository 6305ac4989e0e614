package icequill.ledger.entries;

import icequill.ledger.store.DamagedRow;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import tools.jackson.core.JacksonException;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Steps of lives as rows. */
record LifeRows(Handle handle) {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String SELECT = "SELECT kind, id, position, event, dated, site_id, said, personal"
            + " FROM life_step ";
    private static final String ORDER = " ORDER BY kind, id, position";

    private record Row(String kind, String id, int position, String event, LocalDate dated, Optional<String> siteId,
            String said, String personal) {

        LifeStep step() {
            return new LifeStep(kind, id, position, event, dated, siteId, map("said", said),
                    map("personal", personal));
        }

        private Map<String, String> map(String column, String json) {
            try {
                return JSON.readValue(json, new TypeReference<>() {
                });
            } catch (JacksonException none) {
                throw new DamagedRow("life_step \"" + kind + " " + id + "\": " + column + " cannot be read");
            }
        }
    }

    List<LifeStep> of(String kind, String id) {
        return handle.createQuery(SELECT + "WHERE kind = :kind AND id = :id" + ORDER).bind("kind", kind)
                .bind("id", id).mapTo(Row.class).map(Row::step).list();
    }

    List<LifeStep> before(String kind, String id, Instant moment) {
        return handle.createQuery(SELECT + "WHERE kind = :kind AND id = :id AND noted_at < :moment" + ORDER)
                .bind("kind", kind).bind("id", id).bind("moment", moment).mapTo(Row.class).map(Row::step).list();
    }

    List<LifeStep> all(String kind) {
        return handle.createQuery(SELECT + "WHERE kind = :kind" + ORDER).bind("kind", kind).mapTo(Row.class)
                .map(Row::step).list();
    }

    List<LifeStep> atSite(String site) {
        return handle.createQuery(SELECT + "WHERE site_id = :site" + ORDER).bind("site", site).mapTo(Row.class)
                .map(Row::step).list();
    }

    List<LifeStep> ofCustomer(String customer) {
        return handle.createQuery(SELECT + "WHERE customer_id = :customer" + ORDER).bind("customer", customer)
                .mapTo(Row.class).map(Row::step).list();
    }

    List<LifeStep> unfinished(String kind, Set<String> over) {
        return handle.createQuery(SELECT + "WHERE kind = :kind AND id IN (SELECT id FROM life_step l WHERE kind = :kind"
                + " AND position = (SELECT max(position) FROM life_step m WHERE m.kind = l.kind AND m.id = l.id)"
                + " AND event NOT IN (<over>))" + ORDER).bind("kind", kind).bindList("over", List.copyOf(over))
                .mapTo(Row.class).map(Row::step).list();
    }

    /** What happened last, by id. */
    Map<String, String> last(String kind) {
        return handle.createQuery("SELECT id, event FROM life_step l WHERE kind = :kind AND position = (SELECT"
                + " max(position) FROM life_step m WHERE m.kind = l.kind AND m.id = l.id)").bind("kind", kind)
                .reduceRows(new TreeMap<>(), (all, row) -> {
                    all.put(row.getColumn("id", String.class), row.getColumn("event", String.class));
                    return all;
                });
    }

    void insert(LifeStep step, Instant now) {
        handle.createUpdate(
                "INSERT INTO life_step (kind, id, position, event, dated, site_id, said, personal, noted_at,"
                        + " customer_id)"
                        + " VALUES (:kind, :id, :position, :event, :dated, :site, :said, :personal, :now, :customer)")
                .bind("kind", step.kind()).bind("id", step.id()).bind("position", step.position())
                .bind("event", step.event()).bind("dated", step.dated()).bind("site", step.site())
                .bind("said", json(step.said())).bind("personal", json(step.personal())).bind("now", now)
                .bind("customer", step.customer()).execute();
    }

    void move(LifeStep step, String site) {
        update("UPDATE life_step SET site_id = :value", step, site);
    }

    /** The database lets this happen only where the customer is forgotten. */
    void forget(LifeStep step) {
        update("UPDATE life_step SET personal = :value", step, json(Map.of()));
    }

    private void update(String set, LifeStep step, String value) {
        handle.createUpdate(set + " WHERE kind = :kind AND id = :id AND position = :position").bind("value", value)
                .bind("kind", step.kind()).bind("id", step.id()).bind("position", step.position()).execute();
    }

    /** Keys in the order of the alphabet, so that the same step is the same text. */
    private static String json(Map<String, String> texts) {
        return JSON.writeValueAsString(new TreeMap<>(texts));
    }
}
