package icequill.files.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.problem.Place;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Comments are told with the values that a reader would take them to be about. */
class EntryCommentsTest {

    private static final String TEXT = """
            # Of the whole file.
            effective: {from: 2026-01-01}   # agreed in May
            grades:
              - id: lead
                hourly:
                  standard: 98.00           # as shipped, put in your own
                minimum: 60                 # common practice
                name: "no. # 1"
              - id: helper
                # from the union's table
                hourly: {standard: 58.00}
            zones:                          # measured
              - {id: area, upTo: 30}

            beyond: 2.40
            """;

    @TempDir
    private Path folder;
    private EntryComments comments;

    @BeforeEach
    void write() throws IOException {
        Files.writeString(folder.resolve("prices.yaml"), TEXT);
        comments = new EntryComments(folder);
    }

    @ParameterizedTest
    @CsvSource({"5, 'as shipped, put in your own'", "6, 'as shipped, put in your own'", "7, common practice",
            "8, agreed in May", "11, from the union's table", "13, measured", "15, agreed in May"})
    void comment_isTheNearest(int line, String said) {
        assertThat(comments.of(at(line))).contains(said);
    }

    @Test
    void wholeEntry_hasAllThatIsSaidWithinIt() {
        assertThat(comments.of(at(3))).contains("as shipped, put in your own; common practice");
    }

    @ParameterizedTest
    @CsvSource({"4, hourly, 5", "5, minimum, 7", "7, hourly, 5", "7, id, 4", "11, id, 9", "9, hourly, 11",
            "2, beyond, 15",
            "15, zones, 12", "4, wage, 4", "9, minimum, 9", "13, upTo, 13"})
    void key_isFoundBesideAnother_inItsEntryOnly(int beside, String key, int line) {
        assertThat(comments.at(at(beside), key).line()).isEqualTo(line);
    }

    @Test
    void whereNothingIsKnown_nothingIsSaid() {
        assertThat(comments.of(new Place("prices.yaml", 0, ""))).isEmpty();
        assertThat(comments.of(new Place("other.yaml", 3, ""))).isEqualTo(Optional.empty());
        assertThat(comments.at(Place.ofFile("other.yaml"), "price").line()).isZero();
    }

    private static Place at(int line) {
        return new Place("prices.yaml", line, "");
    }
}
