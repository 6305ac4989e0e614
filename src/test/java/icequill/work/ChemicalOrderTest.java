package icequill.work;

import static icequill.work.Chemistry.ACID;
import static icequill.work.Chemistry.CHLORINE;
import static icequill.work.Chemistry.OTHER;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Acid and chlorine never meet. Steps are written A, C, N, Q, P, O for what is used, 1 to 9 for flushes, p for a pH reading. */
class ChemicalOrderTest {

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', value = {
            "A 3p C     | ''",
            "A 3 p C    | ''",
            "A 1 1 1p C | ''",
            "A 3p O     | ''",
            "C 3p A 3   | ''",
            "A A 3      | ''",
            "C C        | ''",
            "O A 3      | ''",
            "''         | ''",
            "AC 3       | in one",
            "A C        | chlorine follows acid after 0 of 3 full flushes",
            "A 2p C     | chlorine follows acid after 2 of 3 full flushes",
            "A 3 C      | chlorine follows acid without a pH reading",
            "A p 3 C    | chlorine follows acid without a pH reading",
            "A O C      | chlorine follows acid after 0 of 3",
            "A 3p A C   | chlorine follows acid after 0 of 3",
            "C A 3      | acid follows chlorine after 0 of 3",
            "C 3 A 3    | acid follows chlorine without a pH reading",
            "Q 3p C     | ''",
            "Q C        | chlorine follows quaternary after 0 of 3 full flushes",
            "C 3 N      | ammonia follows chlorine without a pH reading",
            "P 3 C      | chlorine follows peracid without a pH reading",
            "A 3p C P   | peracid follows chlorine after 0 of 3",
            "P Q N O    | ''",
            "QC 3       | brings quaternary and chlorine together",
            "A          | not flushed out",
            "A 2 O      | not flushed out"})
    void problems_sequence_asTheRuleSays(String steps, String message) {
        List<Problem> problems = ChemicalOrder.problems(steps(steps));

        if (message.isEmpty()) {
            assertThat(problems).isEmpty();
        } else {
            assertThat(problems).singleElement().matches(problem -> problem.code() == Code.WRONG_ORDER);
            assertThat(problems.getFirst().message().replace("brings acid and chlorine together", "in one"))
                    .contains(message);
        }
    }

    /** Any sequence that passes, walked through by another way of counting, has flushes and a reading wherever it must. */
    @Test
    void problems_anySequence_soundOnlyIfFlushedAndMeasured() {
        Random random = new Random(7);
        int valid = 0;
        for (int i = 0; i < 20_000; i++) {
            List<ChemicalOrder.Step> steps = new ArrayList<>();
            for (int length = random.nextInt(7); length >= 0; length--) {
                steps.add(step(List.of("A", "C", "Q", "P", "3p", "3", "p", "1p", "2").get(random.nextInt(9))));
            }
            if (ChemicalOrder.problems(steps).isEmpty()) {
                valid++;
                assertThat(everyMeetingIsSafe(steps)).as(steps.toString()).isTrue();
            }
        }
        assertThat(valid).isGreaterThan(1000);
    }

    /** Looks at every pair of acid and chlorine, and at all that is done between the two. */
    private static boolean everyMeetingIsSafe(List<ChemicalOrder.Step> steps) {
        for (int i = 0; i < steps.size(); i++) {
            for (int j = i + 1; j < steps.size(); j++) {
                Set<Chemistry> both = new HashSet<>(steps.get(i).chemistry());
                both.addAll(steps.get(j).chemistry());
                List<ChemicalOrder.Step> between = steps.subList(i + 1, j);
                int flushes = between.stream().mapToInt(step -> step.procedure().flushes()).sum();
                boolean measured = between.stream()
                        .anyMatch(step -> step.procedure().readings().contains(Reading.PH));
                if (both.contains(CHLORINE)
                        && !Collections.disjoint(both, Set.of(ACID, Chemistry.QUATERNARY, Chemistry.PERACID))
                        && (flushes < 3 || !measured)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static List<ChemicalOrder.Step> steps(String text) {
        return Arrays.stream(text.split(" ", -1)).filter(word -> !word.isEmpty()).map(ChemicalOrderTest::step)
                .toList();
    }

    private static ChemicalOrder.Step step(String word) {
        Set<Chemistry> chemistry = new HashSet<>();
        if (word.contains("A")) {
            chemistry.add(ACID);
        }
        if (word.contains("C")) {
            chemistry.add(CHLORINE);
        }
        if (word.contains("N")) {
            chemistry.add(Chemistry.AMMONIA);
        }
        if (word.contains("Q")) {
            chemistry.add(Chemistry.QUATERNARY);
        }
        if (word.contains("P")) {
            chemistry.add(Chemistry.PERACID);
        }
        if (word.contains("O")) {
            chemistry.add(OTHER);
        }
        int flushes = Character.isDigit(word.charAt(0)) ? Integer.parseInt(word.substring(0, 1)) : 0;
        List<Reading> readings = word.endsWith("p") ? List.of(Reading.PH) : List.of();
        return new ChemicalOrder.Step(word, chemistry, new Procedure(Optional.empty(), flushes, readings),
                Place.NOWHERE);
    }
}
