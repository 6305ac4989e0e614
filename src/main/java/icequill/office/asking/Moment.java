package icequill.office.asking;

import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.work.LocalTimes;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time of day as it was answered.
 *
 * @param offset from UTC, where clocks repeat the hour
 */
record Moment(LocalDate day, LocalTime time, Optional<String> offset) {

    private static final Pattern WRITTEN = Pattern
            .compile("(?:(\\d{4}-\\d{2}-\\d{2})[T ]+)?(\\d{1,2})[:.]?(\\d{2})([+-]\\d{2}:\\d{2})?");
    /** A visit past midnight is shorter; longer is a slip of the pen. */
    private static final Duration LONGEST_NIGHT = Duration.ofHours(12);

    /** Where a time leads to; a day may stand before it. */
    static Turn read(Setting setting, String answer, LocalDate day, Function<Moment, Turn> then) {
        return of(answer, day).map(moment -> moment.checked(setting, then))
                .orElseGet(() -> setting.asking().wrong("time", answer));
    }

    private static Optional<Moment> of(String answer, LocalDate day) {
        Matcher written = WRITTEN.matcher(answer);
        if (!written.matches()) {
            return Optional.empty();
        }
        Optional<LocalDate> on = written.group(1) == null ? Optional.of(day) : DayQuestion.day(written.group(1));
        int hour = Integer.parseInt(written.group(2));
        int minute = Integer.parseInt(written.group(3));
        return on.filter(found -> hour < 24 && minute < 60)
                .map(found -> new Moment(found, LocalTime.of(hour, minute), Optional.ofNullable(written.group(4))));
    }

    /** As a form has it. */
    static Moment written(String text) {
        return of(text, LocalDate.EPOCH).orElseThrow();
    }

    private Turn checked(Setting setting, Function<Moment, Turn> then) {
        return switch (resolved(setting)) {
        case Validated.Valid<ZonedDateTime> valid -> then.apply(this);
        case Validated.Invalid<ZonedDateTime> invalid -> setting.asking().wrong(first(invalid));
        };
    }

    private static Problem first(Validated.Invalid<ZonedDateTime> invalid) {
        return invalid.problems().getFirst();
    }

    private Validated<ZonedDateTime> resolved(Setting setting) {
        return LocalTimes.resolve(day.atTime(time), offset.map(ZoneOffset::of), setting.zone(), Place.NOWHERE);
    }

    /** The same, on the next day where it would be before an arrival, unless that is too long to be a night's work. */
    Optional<Moment> after(Moment arrival) {
        Moment next = new Moment(day.plusDays(1), time, offset);
        return isAfter(arrival)
                ? Optional.of(this)
                : Optional.of(next).filter(late -> Duration.between(arrival.day.atTime(arrival.time),
                        late.day.atTime(late.time)).compareTo(LONGEST_NIGHT) <= 0);
    }

    private boolean isAfter(Moment other) {
        return day.atTime(time).isAfter(other.day.atTime(other.time));
    }

    /** As it is answered. */
    String shortText() {
        return time + offset.orElse("");
    }

    /** As a form has it. */
    String text() {
        return day + "T" + shortText();
    }
}
