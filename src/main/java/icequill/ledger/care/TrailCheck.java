package icequill.ledger.care;

import icequill.ledger.store.Seal;
import icequill.ledger.trail.Snapshot;
import icequill.ledger.trail.Subject;
import icequill.ledger.trail.TrailEvent;
import icequill.ledger.trail.TrailHead;
import icequill.ledger.trail.TrailRow;
import icequill.ledger.trail.TrailRows;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.type.TypeReference;

/**
 * Goes along the trail, whose seals must follow one another, and along each entry: every change begins where the one before it ended,
 * and the last ends with what stands in the book.
 */
final class TrailCheck {

    private final Handle handle;
    private final Problems findings;
    private final Set<String> forgotten = new HashSet<>();
    private TrailHead head = TrailHead.NONE;
    private long values;
    private @Nullable TrailRow last;

    TrailCheck(Handle handle, Problems findings) {
        this.handle = handle;
        this.findings = findings;
    }

    /** How far it came. */
    TrailHead head() {
        return head;
    }

    /** Whether rows follow one another, and what stands beside each is what it sealed. */
    void followSeals() {
        forgotten.addAll(handle.createQuery("SELECT id FROM customer WHERE forgotten_on IS NOT NULL")
                .mapTo(String.class).list());
        TrailRows.each(handle, this::follow);
        long stored = handle.createQuery("SELECT count(*) FROM trail_value").mapTo(Long.class).one();
        if (stored > values) {
            damaged(stored - values + " values of the trail belong to no row of it");
        }
    }

    /** Whether changes follow one another, and the last of each entry is what stands in the book. */
    void compareEntries() {
        TrailRows.byEntry(handle, sealed -> tell(sealed.row()));
        end();
        for (Subject subject : Subject.values()) {
            subject.untold(handle).forEach(entry -> damaged(name(subject.name(), entry) + " is not in the trail"));
        }
    }

    private void follow(TrailRows.Sealed sealed) {
        TrailRow row = sealed.row();
        for (TrailRow.Side side : List.of(row.before(), row.after())) {
            checkValue(row, side);
        }
        if (row.number() == 0) {
            if (!row.equals(TrailRow.STOOD) || !sealed.seal().equals(Seal.NONE)) {
                damaged("row 0 of the trail is none");
            }
            return;
        }
        if (row.number() != head.rows() + 1) {
            damaged("rows of the trail are missing between " + head.rows() + " and " + row.number());
        } else if (!row.previousSeal().equals(head.seal())) {
            damaged(row.text() + " does not follow the one before it: one of the two was changed, or put in later");
        }
        if (!row.seal().equals(sealed.seal())) {
            damaged(row.text() + " was changed: it does not fit its seal");
        }
        head = new TrailHead(row.number(), sealed.seal());
    }

    private void checkValue(TrailRow row, TrailRow.Side side) {
        values += side.value().isPresent() ? 1 : 0;
        if (side.isGone() && side.owner().filter(forgotten::contains).isEmpty()) {
            damaged("what " + row.text() + " says is missing, and its customer was not forgotten");
        }
        if (side.value().isPresent() && !side.hash().equals(side.value().map(TrailRow.Value::hash))) {
            damaged("what " + row.text() + " says was changed");
        }
    }

    private void tell(TrailRow row) {
        TrailRow before = last;
        if (before == null || !before.entry().equals(row.entry()) || !before.kind().equals(row.kind())) {
            end();
            if (row.before().hash().isPresent()) {
                damaged(name(row) + " was there before the first " + row.text() + " that tells of it");
            }
        } else if (!follows(before.after(), row)) {
            damaged(name(row) + " was changed past the trail before " + row.text());
        }
        last = row;
    }

    /** What the papers themselves gave back begins anew, whatever there was before. */
    private static boolean follows(TrailRow.Side before, TrailRow row) {
        TrailRow.Side after = row.before();
        return row.event().equals(TrailEvent.TAKEN_FROM_PAPER.name())
                || (before.hash().isPresent() == after.hash().isPresent() && (before.isGone() || after.isGone()
                        || before.data().equals(after.data())));
    }

    /** Holds the newest of an entry against the book. */
    private void end() {
        TrailRow newest = last;
        if (newest == null) {
            return;
        }
        Optional<Subject> subject = Stream.of(Subject.values()).filter(each -> each.name().equals(newest.kind()))
                .findFirst();
        Optional<Snapshot> now = subject.flatMap(known -> Snapshot.of(handle, known, newest.entry()));
        if (newest.after().isGone()) {
            damaged("what " + newest.text() + " says is missing, though " + name(newest) + " is still so");
        } else if (now.isEmpty() != newest.after().hash().isEmpty()) {
            damaged(now.isEmpty()
                    ? name(newest) + " is in the trail, and not in the book"
                    : name(newest) + " is in the book, and by the trail it is gone");
        } else if (!now.map(Snapshot::data).equals(newest.after().data())) {
            damaged(name(newest) + " is not as the trail has it: "
                    + String.join(", ", differing(now.map(Snapshot::data), newest.after().data())));
        }
    }

    private static Set<String> differing(Optional<String> now, Optional<String> told) {
        try {
            Map<String, Object> one = map(now);
            Map<String, Object> other = map(told);
            Set<String> keys = new TreeSet<>(one.keySet());
            keys.addAll(other.keySet());
            keys.removeIf(key -> Objects.equals(one.get(key), other.get(key)));
            return keys;
        } catch (JacksonException none) {
            return Set.of("what the trail has cannot be read");
        }
    }

    private static Map<String, Object> map(Optional<String> json) {
        return Archive.JSON.readValue(json.orElse("{}"), new TypeReference<>() {
        });
    }

    private static String name(TrailRow row) {
        return name(row.kind(), row.entry());
    }

    private static String name(String kind, String entry) {
        return kind.toLowerCase(Locale.ROOT) + " \"" + entry + "\"";
    }

    private void damaged(String message) {
        findings.add(Code.BOOK_DAMAGED, Place.NOWHERE, message, "the row from a backup");
    }
}
