package icequill.cli.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TableTest {

    private static final List<String> HEAD = List.of("line", "outcome", "quantity", "net");
    private static final List<List<String>> ROWS = List.of(
            List.of("Service call within 30 miles, standard hours", "Charged", "1 visit", "52.00"),
            List.of("Labor, repair: lead technician, after hours", "Charged", "65 min", "159.25"));

    @ParameterizedTest
    @ValueSource(ints = {60, 80, 200})
    void table_onATerminal_isNoWiderAndLosesNoWord(int columns) {
        String table = Table.of(HEAD, ROWS, 2, columns);

        assertThat(table.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(columns));
        assertThat(table.split("\\s+")).contains("Service", "hours", "52.00", "technician,", "after", "159.25");
    }

    @Test
    void row_broken_keepsItsNumbersOnItsFirstLine() {
        assertThat(Table.of(HEAD, ROWS, 2, 50)).isEqualTo("""
                line                     outcome  quantity     net
                -----------------------  -------  --------  ------
                Service call within 30   Charged   1 visit   52.00
                miles, standard hours
                Labor, repair: lead      Charged    65 min  159.25
                technician, after hours""".replace("\n", System.lineSeparator()));
    }

    /** Another program reads a row as a line. */
    @Test
    void row_withoutATerminal_isALine() {
        assertThat(Table.of(HEAD, ROWS, 2)).hasLineCount(4);
    }

    /** A serial that is one long word is broken where it must, and a terminal too narrow for the numbers gets long lines. */
    @Test
    void wordWiderThanItsColumn_isBroken_andNumbersNeverAre() {
        List<List<String>> rows = List.of(List.of("X".repeat(40), "9,999,999,999.99"));

        assertThat(Table.of(List.of("serial", "net"), rows, 1, 38).lines().skip(2).map(String::strip)).containsExactly(
                "X".repeat(20) + "  9,999,999,999.99", "X".repeat(20));
        assertThat(Table.of(List.of("serial", "net"), rows, 1, 10)).contains("XXXXXXXXXXXX  9,999,999,999.99");
    }

    @Test
    void id_isNeverBroken() {
        List<List<String>> rows = List.of(List.of("pennon-wharf-taproom", "Pennon Wharf Taproom and Kitchen"));

        assertThat(Table.of(List.of("id", "name"), rows, 2, 36).lines().skip(2)).containsExactly(
                "pennon-wharf-taproom  Pennon Wharf", "                      Taproom and",
                "                      Kitchen");
    }
}
