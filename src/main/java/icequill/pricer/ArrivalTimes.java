package icequill.pricer;

import icequill.party.AccessHours;
import icequill.work.BandWeek;
import icequill.work.BandWeek.Window;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * When a planned visit may begin.
 *
 * @param turns minutes from arrival on at which the price of an hour may change
 */
record ArrivalTimes(BandWeek week, Optional<AccessHours> access, List<Integer> turns) {

    ArrivalTimes {
        turns = List.copyOf(turns);
    }

    /** The planned day, or the first working day after it. */
    LocalDate day(LocalDate planned) {
        LocalDate day = planned;
        while (!week.isWorkday(day)) {
            day = day.plusDays(1);
        }
        return day;
    }

    /**
     * All beginnings of which one is cheapest: the price changes only where the visit's beginning, its end or a turn passes from one
     * labor band into another. Without hours of access, where the day's windows begin.
     *
     * @param minutes that the visit takes
     * @return at least one, by the clock
     */
    List<LocalDateTime> on(LocalDate day, int minutes) {
        return access.map(hours -> within(hours, day, minutes)).orElseGet(() -> windows(day));
    }

    private List<LocalDateTime> within(AccessHours hours, LocalDate day, int minutes) {
        int latest = Math.max(0, hours.length() - minutes);
        IntStream edges = week.windows().stream().flatMap(window -> Stream.of(window.from(), window.until()))
                .flatMapToInt(edge -> IntStream
                        .concat(IntStream.of(0, minutes), turns.stream().mapToInt(Integer::intValue))
                        .map(before -> hours.after(edge.minusMinutes(before))));
        return IntStream.concat(IntStream.of(0, latest), edges).filter(begin -> begin <= latest).distinct().sorted()
                .mapToObj(day.atTime(hours.from())::plusMinutes).toList();
    }

    private List<LocalDateTime> windows(LocalDate day) {
        List<LocalDateTime> begins = week.windows().stream()
                .filter(window -> window.days().contains(day.getDayOfWeek())).map(Window::from).distinct().sorted()
                .map(day::atTime).toList();
        return begins.isEmpty() ? List.of(day.atStartOfDay()) : begins;
    }
}
