package icequill.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProblemTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"decaler | did you mean \"descaler\"? allowed: brush, descaler, filter",
            "Filter | did you mean \"filter\"? allowed: brush, descaler, filter",
            "zzzzzz | allowed: brush, descaler, filter"})
    void oneOf_misspelled_nearestFirst(String found, String allowed) {
        assertThat(Problem.oneOf(found, List.of("filter", "descaler", "brush"))).isEqualTo(allowed);
    }

    @Test
    void oneOf_nothingKnown_saysSo() {
        assertThat(Problem.oneOf("x", List.of())).isEqualTo("none is defined yet");
    }

    @Test
    void text_placeMessageAllowed_onOneLine() {
        Problem whole = new Problem(Code.MISSING, new Place("visits/a.yaml", 3, "people"), "nothing here", "somebody");
        Problem bare = new Problem(Code.MISSING, Place.NOWHERE, "nothing here", "");
        Problem noLine = new Problem(Code.MISSING, Place.ofFile("shop.yaml"), "nothing here", "");

        assertThat(whole.text()).isEqualTo("visits/a.yaml:3: people: nothing here (somebody)");
        assertThat(bare.text()).isEqualTo("nothing here");
        assertThat(noLine.text()).isEqualTo("shop.yaml: nothing here");
    }

    @Test
    void or_problemsFound_valueIsNotAskedFor() {
        Problems problems = new Problems();
        problems.add(Code.MISSING, Place.NOWHERE, "a", "");
        problems.add(Code.MISSING, Place.NOWHERE, "a", "");

        Validated<String> result = problems.or(() -> {
            throw new IllegalStateException("asked");
        });

        assertThat(problems.isEmpty()).isFalse();
        assertThat(result.problems()).hasSize(1);
        assertThatIllegalStateException().isThrownBy(result::orElseThrow);
        assertThat(result.map(String::length).problems()).hasSize(1);
    }

    @Test
    void take_soundAndFaulty_valueOrCollected() {
        Problems problems = new Problems();

        assertThat(problems.take(Validated.valid("x"))).contains("x");
        assertThat(problems.take(Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "a", "")))).isEmpty();
        assertThat(problems.list()).hasSize(1);
    }

    @Test
    void faulty_withoutProblem_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Validated.Invalid<>(List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> Check.inRange(5, 1, 4, "x"))
                .withMessage("x is 5, must be from 1 to 4");
        assertThatIllegalArgumentException().isThrownBy(() -> Check.inRange(0, 1, 4, "x"));
    }
}
