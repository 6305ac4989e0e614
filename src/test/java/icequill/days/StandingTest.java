package icequill.days;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the visits of a calendar stand: due on the first of March, June and September. */
class StandingTest {

    private static final List<LocalDate> CALENDAR = Stream.of("2026-03-01", "2026-06-01", "2026-09-01")
            .map(LocalDate::parse).toList();

    /**
     * Worked out by the days between: 17 April is 47 from March and 45 from June; 16 April is 46 from both, so it is March's.
     *
     * @param visits as 2026-05-20, planned ones with a + before them
     */
    @ParameterizedTest
    @CsvSource({"2026-02-01, '', DUE DUE DUE", "2026-03-01, '', DUE DUE DUE", "2026-03-02, '', LATE DUE DUE",
            "2026-06-01, '', MISSED DUE DUE", "2026-06-02, '', MISSED LATE DUE", "2026-12-01, '', MISSED MISSED LATE",
            "2026-06-02, 2026-04-16, DONE LATE DUE", "2026-06-02, 2026-04-17, MISSED DONE DUE",
            "2026-06-02, +2026-06-09, MISSED PLANNED DUE", "2026-06-10, +2026-06-02 2026-06-08, MISSED DONE DUE",
            "2026-06-02, 2026-02-20 2026-05-20 +2026-09-03, DONE DONE PLANNED"})
    void visit_answersTheDayThatItIsNearestTo(LocalDate today, String visits, String states) {
        assertThat(states(visits, today, true)).hasToString(states);
    }

    /** Brushing a condenser is no full cleaning. */
    @Test
    void otherWork_answersNothing() {
        assertThat(states("2026-06-01", LocalDate.parse("2026-06-02"), false)).hasToString("MISSED LATE DUE");
    }

    private static String states(String visits, LocalDate today, boolean doesTheWork) {
        List<Attended> attended = new ArrayList<>();
        List<String> days = List.of(visits.split(" ", -1));
        IntStream.range(0, visits.isEmpty() ? 0 : days.size()).forEach(i -> {
            String visit = days.get(i);
            attended.add(
                    new Attended("visit-" + i, LocalDate.parse(visit.replace("+", "")), visit.startsWith("+"), false,
                            List.of(), Set.of(), Set.of()));
        });
        return String.join(" ", Standing.of(CALENDAR, (due, visit) -> doesTheWork, attended, today).stream()
                .map(standing -> standing.state().name()).toList());
    }
}
