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

/** When a planned visit may begin. */
record ArrivalTimes(BandWeek week, Optional<AccessHours> access) {

    /** The planned day, or the first working day after it. */
    LocalDate day(LocalDate planned) {
        LocalDate day = planned;
        while (!week.isWorkday(day)) {
            day = day.plusDays(1);
        }
        return day;
    }

    /**
     * All beginnings of which one is cheapest: the price changes only where the visit's beginning or its end passes from one
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
                .flatMapToInt(edge -> IntStream.of(hours.after(edge), hours.after(edge.minusMinutes(minutes))));
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
