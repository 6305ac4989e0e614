package icequill.answer;

import icequill.explain.ConstantKey;
import icequill.ledger.trail.Subject;
import icequill.ledger.trail.TrailEvent;
import icequill.ledger.trail.TrailRow;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Who changed what in the book, the newest first.
 *
 * @param hasMore whether there are older changes
 */
public record TrailSheet(List<Step> trail, boolean hasMore) {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    /** The screen names so many keys of a change, and counts the rest. */
    private static final int NAMED = 12;
    private static final String INDENT = "    ";
    /** What the line above says already, and what nobody reads. */
    private static final Set<String> UNTOLD = Set.of("id", "number", "seal");

    public TrailSheet {
        trail = List.copyOf(trail);
    }

    /**
     * One change.
     *
     * @param at where the shop is
     * @param isForgotten whether what it was before or after is not known any more
     * @param isNew whether there was no such entry before
     */
    public record Step(long number, ZonedDateTime at, String who, String office, Subject kind, String id,
            TrailEvent event,
            boolean isForgotten, boolean isNew, List<ChangedKey> changes) {

        public Step {
            changes = List.copyOf(changes);
        }

        static Step of(TrailRow row, ZoneId zone) {
            boolean isForgotten = row.before().isGone() || row.after().isGone();
            return new Step(row.number(), row.at().atZone(zone), row.who(), row.office(),
                    Subject.valueOf(row.kind()), row.entry(), TrailEvent.valueOf(row.event()), isForgotten,
                    row.before().hash().isEmpty(),
                    isForgotten ? List.of() : ChangedKey.between(row.before().data(), row.after().data()));
        }

        /** When, who, what; then a line for each key, or one line for all of what is new. */
        public List<String> lines() {
            List<String> lines = new ArrayList<>();
            lines.add(TIME.format(at) + "  " + who + (office.isEmpty() ? "" : " (" + office + ")") + "  "
                    + ConstantKey.words(kind.name()) + " " + id + " " + ConstantKey.words(event.name()));
            if (isForgotten) {
                lines.add(INDENT + "what it was is forgotten with its customer");
            }
            List<String> told = changes.stream().filter(change -> !UNTOLD.contains(change.key()))
                    .map(change -> change.text(isNew)).toList();
            if (isNew && !told.isEmpty()) {
                lines.add(INDENT + told.stream().limit(NAMED).collect(Collectors.joining(", ")));
            } else {
                told.stream().limit(NAMED).map(INDENT::concat).forEach(lines::add);
            }
            if (told.size() > NAMED) {
                lines.add(INDENT + "and " + (told.size() - NAMED) + " more, which --json names");
            }
            return lines;
        }
    }

    /**
     * The first so many.
     *
     * @param rows one more than are wanted, if there are
     */
    public static TrailSheet of(List<TrailRow> rows, int most, ZoneId zone) {
        return new TrailSheet(rows.stream().limit(most).map(row -> Step.of(row, zone)).toList(), rows.size() > most);
    }

    public Stream<String> lines() {
        return trail.stream().flatMap(step -> step.lines().stream());
    }
}
