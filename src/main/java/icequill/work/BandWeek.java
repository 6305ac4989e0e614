package icequill.work;

import icequill.problem.Check;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Which band holds when: weekly windows, one band for holidays and one for all other hours. The band of a moment is that of
 * its local time, so that every real minute has exactly one band even on days when clocks change.
 *
 * @param windows tried in order; the first that fits gives the band
 */
public record BandWeek(List<Window> windows, Band onHolidays, Band otherwise, List<Holiday> holidays) {

    public BandWeek {
        windows = List.copyOf(windows);
        holidays = List.copyOf(holidays);
    }

    /**
     * Hours of some days of the week, half-open.
     *
     * @param until the end; midnight means the end of the day
     */
    public record Window(Set<DayOfWeek> days, LocalTime from, LocalTime until, Band band) {
        public Window {
            days = Set.copyOf(days);
            Check.that(until.equals(LocalTime.MIDNIGHT) || from.isBefore(until), "a window must not be empty");
        }

        private int minutes() {
            int minutes = Math.toIntExact(Duration.between(from, until).toMinutes());
            return minutes > 0 ? minutes : minutes + (int) Duration.ofDays(1).toMinutes();
        }

        boolean contains(LocalDateTime local) {
            LocalTime time = local.toLocalTime();
            return days.contains(local.getDayOfWeek()) && !time.isBefore(from)
                    && (until.equals(LocalTime.MIDNIGHT) || time.isBefore(until));
        }
    }

    /** A stretch of real time within one band. */
    public record Slice(Band band, Instant from, Instant until) {
        public long minutes() {
            return Duration.between(from, until).toMinutes();
        }
    }

    /** One band at all hours. */
    public static BandWeek always(Band band) {
        return new BandWeek(List.of(), band, band, List.of());
    }

    /** Whether there is one band at all hours. */
    public boolean isAlwaysTheSame() {
        return windows.isEmpty() && onHolidays.equals(otherwise);
    }

    public Band at(LocalDateTime local) {
        if (isHoliday(local.toLocalDate())) {
            return onHolidays;
        }
        return windows.stream().filter(window -> window.contains(local)).map(Window::band).findFirst()
                .orElse(otherwise);
    }

    /** Whether a day is neither a holiday nor on a weekend. */
    public boolean isWorkday(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY && !isHoliday(day);
    }

    /** Minutes of the longest window that a day has; empty where it has none, as on a holiday. */
    public Optional<Integer> longestWindow(LocalDate day) {
        return workingHours(day).map(Window::minutes);
    }

    /** The longest window that a day has; empty where it has none, as on a holiday. */
    public Optional<Window> workingHours(LocalDate day) {
        return windows.stream().filter(window -> !isHoliday(day) && window.days().contains(day.getDayOfWeek()))
                .max(Comparator.comparingInt(Window::minutes));
    }

    public boolean isHoliday(LocalDate day) {
        return holidays.stream().anyMatch(holiday -> holiday.rule().fallsOn(day));
    }

    /**
     * Splits real time at every change of band.
     *
     * @param from inclusive, in the shop's zone
     * @param until exclusive, not before {@code from}
     * @return in order, without gaps, neighbours in different bands; empty when nothing lies between
     */
    public List<Slice> split(ZonedDateTime from, ZonedDateTime until) {
        Check.that(!until.isBefore(from), "ends before it begins: " + from + ", " + until);
        List<Slice> slices = new ArrayList<>();
        Instant start = from.toInstant();
        for (Instant cut : cuts(from, until)) {
            Band band = at(LocalDateTime.ofInstant(start, from.getZone()));
            Slice last = slices.isEmpty() ? null : slices.getLast();
            if (last != null && last.band().equals(band)) {
                slices.set(slices.size() - 1, new Slice(band, last.from(), cut));
            } else {
                slices.add(new Slice(band, start, cut));
            }
            start = cut;
        }
        return slices;
    }

    /** Every moment after the start at which the band might change, and the end. */
    private Set<Instant> cuts(ZonedDateTime from, ZonedDateTime until) {
        ZoneId zone = from.getZone();
        Set<Instant> cuts = new TreeSet<>();
        LocalDate last = until.toLocalDate().plusDays(1);
        for (LocalDate day = from.toLocalDate(); !day.isAfter(last); day = day.plusDays(1)) {
            LocalDate date = day;
            Stream<LocalTime> edges = windows.stream().flatMap(window -> Stream.of(window.from(), window.until()));
            Stream.concat(Stream.of(LocalTime.MIDNIGHT), edges)
                    .flatMap(time -> moments(date.atTime(time), zone))
                    .filter(moment -> moment.isAfter(from.toInstant()) && moment.isBefore(until.toInstant()))
                    .forEach(cuts::add);
        }
        for (ZoneOffsetTransition change = zone.getRules().nextTransition(from.toInstant()); change != null
                && change.getInstant().isBefore(until.toInstant()); change = zone.getRules()
                        .nextTransition(change.getInstant())) {
            cuts.add(change.getInstant());
        }
        if (until.isAfter(from)) {
            cuts.add(until.toInstant());
        }
        return cuts;
    }

    /** One moment as a rule, none for a time that clocks skip, two for one that they repeat. */
    private static Stream<Instant> moments(LocalDateTime local, ZoneId zone) {
        return zone.getRules().getValidOffsets(local).stream().map(local::toInstant);
    }
}
