package icequill.outlook.minutes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.outlook.minutes.TaskProposal.Why;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Minutes that were worked against those that were planned, held against figures worked out by hand. */
class WorkedMinutesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final Map<String, Integer> NOW = Map.of("condenser", 10, "descale", 40);

    /** Brushing alone: 10 minutes and no wait. */
    private static VisitTime light(int worked) {
        return new VisitTime("light", DAY, List.of("Ada"), List.of("Cuber 300"), worked, 10, Map.of("condenser", 10));
    }

    /** With the descaling, 40 minutes and 20 of waiting: 70. */
    private static VisitTime full(int worked, String... people) {
        return new VisitTime("full", DAY, List.of(people.length == 0 ? new String[]{"Rosa"} : people),
                List.of("Cuber 500"), worked, 70, NOW);
    }

    /** The critical numbers of the sign test, two-sided at 0.05: none of 6 to 8, one of 9, two of 12, five of 20 (binomial of one half). */
    @ParameterizedTest
    @CsvSource({"6, 0", "8, 0", "9, 1", "12, 2", "20, 5"})
    void median_limits_leaveOutAsManyAsTheSignTest(int visits, int beyond) {
        List<Double> each = DoubleStream.iterate(1, one -> one + 1).limit(visits).boxed().toList();

        Times times = Times.median(each);

        assertThat(times.times()).isEqualTo((visits + 1) / 2.0);
        assertThat(times.sure().orElseThrow()).isEqualTo(new Times.Limits(1 + beyond, visits - beyond));
    }

    @Test
    void median_ofFive_saysNothingForSure() {
        assertThat(Times.median(List.of(1.0, 2.0, 3.0, 4.0, 90.0)).sure()).isEmpty();
        assertThat(Times.median(List.of(1.0, 2.0, 3.0, 4.0, 90.0)).times()).isEqualTo(3);
    }

    /** Brushing 12 instead of 10, descaling 60 instead of 40: 12 alone, and with the 20 of waiting 92. Nothing is left over to doubt. */
    @Test
    void proposals_tasksSeenApart_eachHasItsOwn() {
        List<VisitTime> visits = new ArrayList<>();
        IntStream.range(0, 6).forEach(i -> visits.addAll(List.of(light(12), full(92))));

        List<TaskProposal> found = WorkedMinutes.of(visits).proposals(NOW);

        assertThat(found).extracting(TaskProposal::task).containsExactly("condenser", "descale");
        assertThat(found).extracting(TaskProposal::proposed).containsExactly(12, 60);
        assertThat(found).extracting(TaskProposal::visits).containsExactly(12, 6);
        assertThat(found).allMatch(task -> task.why() == Why.LONGER && task.together().isEmpty());
    }

    /** Only ever done together: 65 at the machines instead of 50 is 1.3 times, so 13 and 52. */
    @Test
    void proposals_tasksAlwaysTogether_areOffAlike() {
        List<TaskProposal> found = WorkedMinutes.of(IntStream.range(0, 7).mapToObj(i -> full(85)).toList())
                .proposals(NOW);

        assertThat(found).extracting(TaskProposal::proposed).containsExactly(13, 52);
        assertThat(found.getFirst().together()).containsExactly("descale");
        assertThat(found.getLast().together()).containsExactly("condenser");
    }

    /** Of five nothing is sure; what is planned lies between 8 and 13; three times as long is not proposed at once. */
    @Test
    void proposals_stayWithinBounds_andSayWhy() {
        assertThat(WorkedMinutes.of(IntStream.range(0, 5).mapToObj(i -> light(14)).toList()).proposals(NOW))
                .singleElement().satisfies(task -> {
                    assertThat(task.proposed()).isEqualTo(10);
                    assertThat(task.why()).isEqualTo(Why.TOO_FEW);
                    assertThat(task.seen()).isEqualTo(new BigDecimal("14.0"));
                    assertThat(task.low()).isEmpty();
                });
        assertThat(WorkedMinutes.of(IntStream.of(8, 9, 9, 11, 12, 13).mapToObj(WorkedMinutesTest::light).toList())
                .proposals(NOW)).singleElement().satisfies(task -> {
                    assertThat(task.why()).isEqualTo(Why.FITS);
                    assertThat(task.low()).contains(new BigDecimal("8.0"));
                    assertThat(task.high()).contains(new BigDecimal("13.0"));
                });
        assertThat(WorkedMinutes.of(IntStream.range(0, 6).mapToObj(i -> light(29)).toList()).proposals(NOW))
                .singleElement().satisfies(task -> {
                    assertThat(task.proposed()).isEqualTo(20);
                    assertThat(task.why()).isEqualTo(Why.FAR);
                });
    }

    /** Nobody forgot to leave for three times as long; two people's visit says nothing of either. */
    @Test
    void visits_farOffOrOfTwo_areNotCountedForAnybody() {
        WorkedMinutes worked = WorkedMinutes
                .of(List.of(light(30), light(31), light(3), light(4), full(80, "Ada", "Rosa"),
                        full(70)));

        assertThat(worked.farOff()).extracting(VisitTime::worked).containsExactly(31, 3);
        assertThat(worked.byPerson()).containsOnlyKeys("Ada", "Rosa");
        assertThat(Objects.requireNonNull(worked.byPerson().get("Ada")).visits()).isEqualTo(2);
        assertThat(Objects.requireNonNull(worked.byPerson().get("Rosa")).times()).isEqualTo(1);
        assertThat(Objects.requireNonNull(worked.byMachine().get("Cuber 500")).visits()).isEqualTo(2);
    }

    /** Visits drawn from known factors, 1.2 and 1.5, each a tenth off to either side: limits hold the truth some nineteen times of twenty. */
    @Test
    void limits_ofDrawnVisits_holdWhatTheyWereDrawnFrom() {
        Random random = new Random(7);
        int held = 0;
        for (int run = 0; run < 300; run++) {
            List<VisitTime> visits = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                visits.add(drawn(Map.of("condenser", 1_000), 1_200, random));
                visits.add(drawn(Map.of("condenser", 1_000, "descale", 4_000), 7_200, random));
            }
            Times descale = GroupTimes.of(visits).times().getLast();
            held += descale.sure().filter(sure -> sure.low() <= 1.5 && 1.5 <= sure.high()).isPresent() ? 1 : 0;
        }

        assertThat(held / 300.0).isEqualTo(0.95, within(0.03));
    }

    private static VisitTime drawn(Map<String, Integer> attended, int mean, Random random) {
        int planned = attended.values().stream().mapToInt(Integer::intValue).sum();
        int worked = (int) (mean + 0.1 * planned * random.nextGaussian());
        return new VisitTime("drawn", DAY, List.of("Ada"), List.of("Cuber 300"), worked, planned, attended);
    }
}
