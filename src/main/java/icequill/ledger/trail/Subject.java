package icequill.ledger.trail;

import icequill.ledger.store.Schema;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** A kind of entry that the trail follows, and the rows that are all of it. */
public enum Subject {

    /** The book itself, as the form of its tables. */
    BOOK("SELECT 'book' AS entry WHERE EXISTS (SELECT 1 FROM trail)",
            "SELECT max(CAST(version AS INTEGER)) AS form, NULL AS owner FROM " + Schema.HISTORY
                    + " WHERE success AND 'book' = ?"),

    CUSTOMER("SELECT id AS entry FROM customer", "SELECT *, id AS owner FROM customer WHERE id = ?"),

    SITE("SELECT id AS entry FROM site", "SELECT *, customer_id AS owner FROM site WHERE id = ?"),

    /** Called by its site and its own id, with a stroke between. */
    MACHINE("SELECT site_id || '/' || id AS entry FROM machine",
            "SELECT m.*, s.customer_id AS owner FROM machine m LEFT JOIN site s ON s.id = m.site_id"
                    + " WHERE m.site_id = ? AND m.id = ?"),

    VISIT("SELECT id AS entry FROM visit",
            "SELECT v.*, s.customer_id AS owner FROM visit v LEFT JOIN site s ON s.id = v.site_id WHERE v.id = ?"),

    AGREEMENT("SELECT id AS entry FROM agreement",
            "SELECT a.*, s.customer_id AS owner FROM agreement a LEFT JOIN site s ON s.id = a.site_id WHERE a.id = ?"),

    /** Called by its kind and its own id, with a stroke between. */
    REQUEST("SELECT kind || '/' || id AS entry FROM request",
            "SELECT r.*, s.customer_id AS owner FROM request r LEFT JOIN site s ON s.id = r.site_id"
                    + " WHERE r.kind = ? AND r.id = ?"),

    PAYMENT("SELECT id AS entry FROM payment", "SELECT *, customer_id AS owner FROM payment WHERE id = ?"),
    /** By its customer. */
    ACCOUNT("SELECT customer_id AS entry FROM account",
            "SELECT *, customer_id AS owner FROM account WHERE customer_id = ?"),
    /** A step of something that lives, called by the kind of that, its id and the position, with strokes between. */
    STEP("SELECT kind || '/' || id || '/' || position AS entry FROM life_step",
            "SELECT l.*, COALESCE(s.customer_id, l.customer_id) AS owner FROM life_step l LEFT JOIN site s ON s.id = l.site_id"
                    + " WHERE l.kind = ? AND l.id = ? AND CAST(l.position AS TEXT) = ?"),
    /** A version of the rates. Its hash stands for its files. */
    RATES("SELECT id AS entry FROM rates_version", "SELECT *, NULL AS owner FROM rates_version WHERE id = ?"),

    /** By its number. Its seal stands for all that it says, and it stays when its customer is forgotten. */
    PAPER("SELECT number AS entry FROM paper",
            "SELECT p.number, p.kind, p.dated, p.due, p.customer_id, p.site_id, p.visit_id, p.agreement, p.corrects,"
                    + " p.replaces, p.currency, p.gross_minor, p.seal, b.reason AS backdated, NULL AS owner"
                    + " FROM paper p LEFT JOIN paper_backdated b ON b.paper_id = p.id WHERE p.number = ?");

    private static final String STROKE = "/";

    private final String entries;
    private final String row;

    /**
     * Rows of another table that belong to an entry.
     *
     * @param name what they are called
     * @param key the column that names the entry
     * @param order of many; empty where there is one at most
     */
    record Part(String name, String table, String key, String order) {

        private static Part list(String name, String table, String key, String order) {
            return new Part(name, table, key, order);
        }

        private static Part one(String name, String table, String key) {
            return new Part(name, table, key, "");
        }

        boolean isList() {
            return !order.isEmpty();
        }

        String query() {
            return "SELECT * FROM " + table + " WHERE " + key + " = ?" + (isList() ? " ORDER BY " + order : "");
        }
    }

    /**
     * A kind of entry.
     *
     * @param entries a query for what all of them are called, as {@code entry}
     * @param row a query for the row of one, with its customer as {@code owner}
     */
    Subject(String entries, String row) {
        this.entries = entries;
        this.row = row;
    }

    String entries() {
        return entries;
    }

    /** Those of which the trail knows nothing. */
    public List<String> untold(Handle handle) {
        return handle.createQuery("SELECT known.entry FROM (" + entries + ") known WHERE NOT EXISTS ("
                + "SELECT 1 FROM trail WHERE trail.entry = known.entry AND trail.kind = :kind) ORDER BY known.entry")
                .bind("kind", name()).mapTo(String.class).list();
    }

    String row() {
        return row;
    }

    List<Part> parts() {
        return switch (this) {
        case CUSTOMER -> List.of(Part.list("billTo", "customer_bill_to", "customer_id", "valid_from"),
                Part.list("certificates", "customer_certificate", "customer_id", "position"),
                Part.list("contacts", "customer_contact", "customer_id", "position"),
                Part.list("mail", "customer_mail", "customer_id", "customer_id"),
                Part.one("merged", "customer_merged", "customer_id"));
        case SITE -> List.of(Part.one("merged", "site_merged", "site_id"));
        case VISIT -> List.of(Part.one("withdrawn", "visit_withdrawn", "visit_id"));
        case PAPER -> List.of(Part.list("visits", "paper_further_visit", "number", "position"));
        case PAYMENT -> List.of(Part.list("shares", "payment_share", "payment_id", "position"),
                Part.one("withdrawn", "payment_withdrawn", "payment_id"));
        case RATES -> List.of(Part.list("adopted", "rates_adopted", "version_id", "number"));
        default -> List.of();
        };
    }

    /** What its row is found by. */
    List<String> key(String entry) {
        int stroke = entry.indexOf(STROKE);
        String first = entry.substring(0, Math.max(0, stroke));
        String rest = entry.substring(stroke + 1);
        int last = rest.lastIndexOf(STROKE);
        return switch (this) {
        case MACHINE, REQUEST -> List.of(first, rest);
        case STEP -> List.of(first, rest.substring(0, Math.max(0, last)), rest.substring(last + 1));
        default -> List.of(entry);
        };
    }

    /** What an entry is called in the trail that has its id within another. */
    public static String part(String whole, String id) {
        return whole + STROKE + id;
    }
}
