package icequill.ledger.trail;

import icequill.ledger.store.Seal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.reflect.ColumnName;

/** How far the trail has come: how many rows, and the seal of the last. */
public record TrailHead(@ColumnName("number") long rows, String seal) {

    public static final TrailHead NONE = new TrailHead(0, Seal.NONE);

    /** As {@link #name} writes it. */
    private static final Pattern NAME = Pattern.compile("trail-([0-9]{1,18})");

    static TrailHead of(Handle handle) {
        return handle.createQuery("SELECT number, seal FROM trail ORDER BY number DESC LIMIT 1")
                .mapTo(TrailHead.class).findOne().orElse(NONE);
    }

    /** What its last row is called beside the numbers of papers. */
    public String name() {
        return "trail-" + rows;
    }

    /** The seal of the row of that name; empty where it is no such name, or there is no such row. */
    public static Optional<String> seal(Handle handle, String name) {
        Matcher form = NAME.matcher(name);
        return form.matches()
                ? handle.createQuery("SELECT seal FROM trail WHERE number = :number")
                        .bind("number", Long.parseLong(form.group(1))).mapTo(String.class).findOne()
                : Optional.empty();
    }
}
