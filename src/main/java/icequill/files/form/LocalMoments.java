package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.work.LocalTimes;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Optional;

/** Local times of forms, with an offset where one is written. */
record LocalMoments(ZoneId zone) {

    /** The time under a key; one that the zone does not have is reported. */
    Optional<ZonedDateTime> at(Fields entry, String key) {
        Optional<String> text = entry.text(key)
                .filter(found -> found.matches("\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}([+-]\\d{2}:\\d{2})?"));
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Place place = entry.place(key);
        try {
            LocalDateTime local = LocalDateTime.parse(text.get().substring(0, 16));
            Optional<ZoneOffset> offset = text.map(found -> found.substring(16)).filter(rest -> !rest.isEmpty())
                    .map(ZoneOffset::of);
            return entry.problems().take(LocalTimes.resolve(local, offset, zone, place));
        } catch (DateTimeException noSuchTime) {
            entry.problems().add(Code.NOT_ALLOWED, place, "there is no time " + text.get(),
                    "a day of the calendar and a time from 00:00 to 23:59");
            return Optional.empty();
        }
    }
}
