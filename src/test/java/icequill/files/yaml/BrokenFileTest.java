package icequill.files.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files that are no YAML of ours, by mistake or on purpose. */
class BrokenFileTest {

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("x.yaml");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            open list       | a: [1, 2           | UNREADABLE    | 1 | not YAML
            same key twice  | a: 1\\na: 2        | DUPLICATE_KEY | 2 | the key "a" stands here a second time (each key once)
            anchor          | a: &x 1            | NOT_ALLOWED   | 1 | an anchor "&x" (write the value out at each place)
            alias           | a: *x              | UNREADABLE    | 1 | not YAML
            alias of a list | a: &x [1]\\nb: *x  | UNREADABLE    | 0 | not YAML
            own tag         | a: !ours 1         | NOT_ALLOWED   | 1 | a tag "!ours" (the value alone)
            binary tag      | a: !!binary MQ==   | NOT_ALLOWED   | 1 | a tag "tag:yaml.org,2002:binary"
            tab             | \\ta: 1            | UNREADABLE    | 1 | not YAML
            two documents   | a: 1\\n---\\nb: 2  | UNREADABLE    | 3 | a second document begins (one document in a file
            list as a key   | ? [a, b]\\n: 1     | UNREADABLE    | 0 | not YAML
            null character  | a: "b\u0000"       | UNREADABLE    | 0 | not YAML
            """)
    void read_notOurYaml_clearProblem(String name, String text, Code code, int line, String message)
            throws IOException {
        List<Problem> problems = read(text.replace("\\n", "\n").replace("\\t", "\t"));

        assertThat(problems).as(problems.toString()).anyMatch(problem -> problem.code() == code
                && (line == 0 || problem.place().line() == line) && problem.text().contains(message));
    }

    /** The file is read on, so that one run reports all of it. */
    @Test
    void read_severalSuchFaults_allReported() throws IOException {
        List<Problem> problems = read("a: &x 1\na: 2\nb: [!t 1, &y 2]\n");

        assertThat(problems).extracting(problem -> problem.code() + " " + problem.place().path())
                .containsExactly("NOT_ALLOWED a", "DUPLICATE_KEY a", "NOT_ALLOWED b[0]", "NOT_ALLOWED b[1]");
    }

    @Test
    @Timeout(20)
    void read_hugeDeepOrExploding_refusedQuickly() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x]\n");
        for (int i = 1; i < 30; i++) {
            bomb.append("a%d: &a%d [*a%d, *a%d, *a%d]%n".formatted(i, i, i - 1, i - 1, i - 1));
        }
        assertThat(read("x: " + "a".repeat(10_000_000))).extracting(Problem::text)
                .containsExactly("x.yaml: the file has 10000003 bytes (at most 1000000)");
        assertThat(read("x: " + "[".repeat(50) + "]".repeat(50))).extracting(Problem::code)
                .containsExactly(Code.TOO_LARGE);
        assertThat(code("x: " + "[".repeat(400_000))).isIn(Code.TOO_LARGE, Code.UNREADABLE);
        assertThat(code("a: &a [*a]")).isIn(Code.NOT_ALLOWED, Code.UNREADABLE);
        assertThat(code(bomb.toString())).isIn(Code.NOT_ALLOWED, Code.UNREADABLE);
    }

    @Test
    void read_exactlyTheLimit_isRead() throws IOException {
        assertThat(read("x: " + "a".repeat(1_000_000 - 3))).isEmpty();
        assertThat(code("x: " + "a".repeat(1_000_000 - 2))).isEqualTo(Code.TOO_LARGE);
    }

    @Test
    void read_notUtf8EmptyOrMissing_saysSo() throws IOException {
        Files.write(file, "site: caf\u00e9".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(problems()).extracting(Problem::text)
                .containsExactly("x.yaml: the file is not in UTF-8 (save it as UTF-8)");
        assertThat(read("# nothing\n")).extracting(Problem::text)
                .containsExactly("x.yaml: the file is empty (keys and values)");
        Files.delete(file);
        assertThat(problems()).extracting(Problem::text).containsExactly("x.yaml: there is no such file");
        Files.createDirectory(file);
        assertThat(problems()).extracting(Problem::code).containsExactly(Code.UNREADABLE);
    }

    @Test
    void read_byteOrderMark_isNoFault() throws IOException {
        assertThat(read("\uFEFFa: 1\n")).isEmpty();
    }

    private Code code(String text) throws IOException {
        return read(text).getFirst().code();
    }

    private List<Problem> read(String text) throws IOException {
        Files.writeString(file, text);
        return problems();
    }

    private List<Problem> problems() {
        Problems problems = new Problems();
        YamlReader.read(file, "x.yaml", problems);
        return problems.list();
    }
}
