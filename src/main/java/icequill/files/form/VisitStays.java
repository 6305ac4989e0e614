package icequill.files.form;

import icequill.files.yaml.Json;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * When each person of a visit is at its site, read like {@link VisitNames}.
 *
 * @param stays one for each time that somebody comes
 */
public record VisitStays(List<Stay> stays) {

    /** Letters of a local date and time to the minute; an offset may follow. */
    private static final int LOCAL = 16;

    /** Somebody at the site. */
    public record Stay(String person, ZonedDateTime from, ZonedDateTime until) {}

    public VisitStays {
        stays = List.copyOf(stays);
    }

    /**
     * Of one visit.
     *
     * @param data as the book has it; blank once it was forgotten
     * @param zone of its times
     */
    public static VisitStays of(String data, ZoneId zone) {
        return new VisitStays(Json.map(data).get("people") instanceof List<?> people
                ? people.stream().flatMap(row -> row instanceof Map<?, ?> person ? stay(person, zone) : Stream.empty())
                        .toList()
                : List.of());
    }

    private static Stream<Stay> stay(Map<?, ?> person, ZoneId zone) {
        return person.get("name") instanceof String name && person.get("arrived") instanceof String arrived
                && person.get("left") instanceof String left
                        ? Stream.of(new Stay(name, moment(arrived, zone), moment(left, zone)))
                        : Stream.empty();
    }

    private static ZonedDateTime moment(String text, ZoneId zone) {
        return text.length() > LOCAL
                ? OffsetDateTime.parse(text).atZoneSameInstant(zone)
                : LocalDateTime.parse(text).atZone(zone);
    }

    /** From when somebody first comes until he last leaves; empty where nobody of the name comes. */
    public Optional<Stay> of(String person) {
        List<Stay> his = stays.stream().filter(stay -> stay.person().equals(person)).toList();
        return his.stream().min(Comparator.comparing(Stay::from))
                .flatMap(first -> his.stream().max(Comparator.comparing(Stay::until))
                        .map(last -> new Stay(person, first.from(), last.until())));
    }
}
