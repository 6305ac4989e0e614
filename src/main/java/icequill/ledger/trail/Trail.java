package icequill.ledger.trail;

import icequill.ledger.store.Author;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Notes within one transaction what it changes. */
public final class Trail {

    /** The version of the tables that first had a trail. */
    public static final int SINCE = 7;

    private static final String BOOK = "book";
    private static final int SALT_BYTES = 16;
    private static final SecureRandom CHANCE = new SecureRandom();

    private final Handle handle;
    private final Instant now;
    private final Author author;
    private @Nullable TrailHead head;

    public Trail(Handle handle, Instant now, Author author) {
        this.handle = handle;
        this.now = now.truncatedTo(ChronoUnit.MILLIS);
        this.author = author;
    }

    /** When the transaction began, to the millisecond. */
    public Instant now() {
        return now;
    }

    /** Who makes the changes. */
    public Author author() {
        return author;
    }

    /** Makes a change to one entry and notes what it was before and is after. What changes nothing leaves no row. */
    public void note(Subject subject, String entry, TrailEvent event, Runnable change) {
        Optional<Snapshot> before = Snapshot.of(handle, subject, entry);
        change.run();
        noted(subject, entry, event, before);
    }

    /** The same for an entry that the book does not have yet. */
    public void begin(Subject subject, String entry, TrailEvent event, Runnable change) {
        change.run();
        noted(subject, entry, event, Optional.empty());
    }

    /**
     * Lets go what the trail says of a customer and his sites, machines and visits, once the book has forgotten him. What entries are
     * by now stays, which is no more than the book itself says; so do all rows, and their seals.
     */
    public void forget(String customer) {
        for (String side : new String[]{"before", "after"}) {
            handle.createUpdate("DELETE FROM trail_value WHERE side = '" + side + "' AND trail_number IN ("
                    + "SELECT t.number FROM trail t WHERE t." + side + "_of = :customer"
                    + (side.equals("after")
                            ? " AND EXISTS (SELECT 1 FROM trail later WHERE later.entry = t.entry"
                                    + " AND later.kind = t.kind AND later.number > t.number)"
                            : "")
                    + ")").bind("customer", customer).execute();
        }
    }

    /**
     * Whether what stands in the book has still to be taken over: it is older than its trail, or has been brought to a newer form. Where
     * there is no trail at all, nothing was entered yet, or somebody took it away, which an audit tells.
     */
    public static boolean isBehind(Handle handle) {
        return TrailRows.newest(handle, Subject.BOOK, BOOK).filter(row -> !row.after().data()
                .equals(Snapshot.of(handle, Subject.BOOK, BOOK).map(Snapshot::data))).isPresent();
    }

    /** Notes all that stands in the book otherwise than the trail has it. */
    public void takeOver() {
        for (Subject subject : Subject.values()) {
            handle.createQuery(subject.entries() + " ORDER BY entry").mapTo(String.class).list()
                    .forEach(entry -> takeOver(subject, entry));
        }
    }

    private void takeOver(Subject subject, String entry) {
        noted(subject, entry, TrailEvent.TAKEN_OVER, standing(handle, subject, entry));
    }

    /** As the trail has it. */
    private static Optional<Snapshot> standing(Handle handle, Subject subject, String entry) {
        return TrailRows.newest(handle, subject, entry).map(TrailRow::after)
                .flatMap(side -> side.data().map(data -> new Snapshot(side.owner(), data)));
    }

    private void noted(Subject subject, String entry, TrailEvent event, Optional<Snapshot> before) {
        Optional<Snapshot> after = Snapshot.of(handle, subject, entry);
        // A machine's customer changes with its site, which has its own row.
        if (after.map(Snapshot::data).equals(before.map(Snapshot::data))) {
            return;
        }
        TrailHead last = head == null ? begun(subject) : head;
        TrailRow row = new TrailRow(last.rows() + 1, now.toString(), author.name(), author.office(), subject.name(),
                entry,
                event.name(), side(before), side(after), last.seal());
        head = new TrailHead(row.number(), row.seal());
        store(row, head.seal());
    }

    /** The trail as it stood before this transaction; its first row tells of the book itself. */
    private TrailHead begun(Subject subject) {
        head = TrailHead.of(handle);
        if (head.rows() == 0 && subject != Subject.BOOK) {
            takeOver(Subject.BOOK, BOOK);
        }
        return head;
    }

    private static TrailRow.Side side(Optional<Snapshot> snapshot) {
        return snapshot.map(found -> {
            TrailRow.Value value = new TrailRow.Value(salt(), found.data());
            return new TrailRow.Side(found.owner(), Optional.of(value.hash()), Optional.of(value));
        }).orElse(TrailRow.Side.NONE);
    }

    private static String salt() {
        byte[] bytes = new byte[SALT_BYTES];
        CHANCE.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    private void store(TrailRow row, String seal) {
        handle.createUpdate(
                """
                        INSERT INTO trail (number, noted_at, who, office, kind, entry, event, before_of, before_hash, after_of,
                            after_hash, previous_seal, seal)
                        VALUES (:number, :notedAt, :who, :office, :kind, :entry, :event, :before.owner, :before.hash,
                            :after.owner, :after.hash, :previousSeal, :seal)""")
                .bindMethods(row).bind("seal", seal).execute();
        store(row.number(), "before", row.before());
        store(row.number(), "after", row.after());
    }

    private void store(long number, String name, TrailRow.Side side) {
        side.value().ifPresent(value -> handle
                .createUpdate("INSERT INTO trail_value (trail_number, side, salt, data)"
                        + " VALUES (:number, :side, :salt, :data)")
                .bindMethods(value).bind("number", number).bind("side", name).execute());
    }
}
