package icequill.files.disk;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.problem.Problem;
import icequill.problem.Problems;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists by RFC 4180: cells in quotes, quotes doubled, lines that end with CR LF. */
class CsvFileTest {

    private static final Set<String> COLUMNS = Set.of("site", "name", "note");

    @TempDir
    Path folder;

    private final Problems problems = new Problems();

    @Test
    void read_quotesAndLineBreaksWithin_cellsAndTheLineOfEachRow() throws IOException {
        List<CsvFile.Row> rows = read(
                "\uFEFFsite,name,note\r\nmill,\"Mill, \"\"old\"\"\",\"two\r\nlines\"\r\n\r\ndock,Dock,\n");

        assertThat(problems.list()).isEmpty();
        assertThat(rows).extracting(CsvFile.Row::line).containsExactly(2, 5);
        assertThat(rows.getFirst().cell("name")).contains("Mill, \"old\"");
        assertThat(rows.getFirst().cell("note")).contains("two\r\nlines");
        assertThat(rows.getLast().cell("note")).isEmpty();
        assertThat(rows.getLast().place("name").reference()).endsWith("list.csv:5");
    }

    @Test
    void read_headAndRowsAreWrong_allIsReportedWithItsLine() throws IOException {
        read("name,nmae,name,colour\na,b,c,d,e\n");

        assertThat(problems.list()).extracting(Problem::text).anySatisfy(text -> assertThat(text)
                .contains("list.csv:1: nmae: there is no column \"nmae\" here (did you mean \"name\"?"))
                .anySatisfy(text -> assertThat(text).contains("there is no column \"colour\" here"))
                .anySatisfy(text -> assertThat(text).contains("name: the column stands here a second time"))
                .anySatisfy(text -> assertThat(text).contains("site: the column is missing"))
                .anySatisfy(text -> assertThat(text).contains("list.csv:2: 5 cells, but the head has 4")).hasSize(5);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"site,name\\nmill,\"open | not CSV", "'' | the column is missing",
            "site:name\\na:b | there is no column \"site:name\" here"})
    void read_somethingElse_saysWhatIsWrong(String text, String message) throws IOException {
        read(text.replace("\\n", "\n"));

        assertThat(problems.list()).extracting(Problem::text).anySatisfy(found -> assertThat(found).contains(message));
    }

    @Test
    void read_missingOrNotUtf8_isAProblem() throws IOException {
        assertThat(CsvFile.read(folder.resolve("none.csv"), COLUMNS, Set.of(), problems)).isEmpty();
        Path latin = Files.write(folder.resolve("latin.csv"), "site\né\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(CsvFile.read(latin, COLUMNS, Set.of(), problems)).isEmpty();

        assertThat(problems.list()).extracting(Problem::message).containsExactly("there is no such file",
                "the line is not in UTF-8; it looks like Windows-1252");
        assertThat(problems.list().getLast().place().line()).isEqualTo(2);
    }

    /** What begins a formula in a spreadsheet: the list of OWASP's page on CSV injection (from memory). */
    @ParameterizedTest
    @CsvSource({"=1+1", "+1", "-1", "@SUM(A1)", "'\t=1'", "'\r=1'"})
    void write_textLikeAFormula_isGuardedAndReadBackAsItWas(String text) throws IOException {
        byte[] csv = csv(List.of("site", "name"), List.of(List.of("-173.38", text)), Set.of(0));

        assertThat(new String(csv, StandardCharsets.UTF_8)).startsWith("site,name\r\n-173.38,")
                .containsPattern("-173\\.38,\"?'[=+@\t\r-]").endsWith("\r\n");
        List<CsvFile.Row> rows = read(new String(csv, StandardCharsets.UTF_8));
        assertThat(rows.getFirst().cells()).containsEntry("name", text).containsEntry("site", "-173.38");
    }

    @Test
    void write_commasQuotesAndBreaks_areQuotedByTheStandard() throws IOException {
        assertThat(
                new String(csv(List.of("a", "b", "c"), List.of(List.of("x,y", "say \"no\"", "1\n2")), Set.of()),
                        StandardCharsets.UTF_8))
                .isEqualTo("a,b,c\r\n\"x,y\",\"say \"\"no\"\"\",\"1\n2\"\r\n");
    }

    private static byte[] csv(List<String> head, List<List<String>> rows, Set<Integer> numbers) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        CsvFile.write(out, head, numbers, rows::forEach);
        return out.toByteArray();
    }

    private List<CsvFile.Row> read(String text) throws IOException {
        return CsvFile.read(Files.writeString(folder.resolve("list.csv"), text), COLUMNS, Set.of("site"), problems);
    }
}
