package icequill.files.pricing;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a folder's papers are made by, as one version. */
class RatesFolderTest {

    @TempDir
    Path folder;

    private void write(String name, String text) throws IOException {
        Files.createDirectories(folder.resolve(name).getParent());
        Files.writeString(folder.resolve(name), text);
    }

    private RatesVersion version() {
        return new RatesFolder(folder).version().orElseThrow();
    }

    /** However the book is written down, and wherever: it is each office's own, and may hold a password. */
    @ParameterizedTest
    @ValueSource(strings = {"name: A\nzone: UTC\n",
            "name: A\nbook: {database: \"jdbc:postgresql://h/s?password=x\"}\nzone: UTC\n",
            "name: A\nbook:\n  database: jdbc:x # password\n\n# within\n  office: north\nzone: UTC\n",
            "book: {database: password,\n  office: north}\nname: A\nzone: UTC\n",
            "name: A\nzone: UTC\nbook:\n  office: north\n",
            "name: A\nbook: {database: password}\nbook: {database: password}\nzone: UTC\n"})
    void book_isNoPartOfAVersion(String settings) throws IOException {
        write("shop.yaml", settings);
        write("pricing/labor.yaml", "kind: labor\n");

        String shared = new String(version().files().get("shop.yaml"), StandardCharsets.UTF_8);
        assertThat(shared).doesNotContain("password", "book", "north").isEqualTo("name: A\nzone: UTC\n");
        assertThat(version().hash()).isEqualTo(RatesVersion.of(Map.of("shop.yaml",
                "name: A\nzone: UTC\n".getBytes(StandardCharsets.UTF_8), "pricing/labor.yaml",
                "kind: labor\n".getBytes(StandardCharsets.UTF_8))).hash());
    }

    @Test
    void commentsBeforeTheNextKey_stay() throws IOException {
        write("shop.yaml", "# ours\nname: A\n# the server\nbook:\n  office: north\n\n# where we are\nzone: UTC\n");
        write("pricing/labor.yaml", "kind: labor\n");

        assertThat(version().files().get("shop.yaml"))
                .asString(StandardCharsets.UTF_8)
                .isEqualTo("# ours\nname: A\n# the server\n\n# where we are\nzone: UTC\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{name: A, book: {database: password}}", "? book\n: {database: password}\nname: A\n",
            "\"book\": {database: password}\nname: A\n", "- book\n", "name: [\n"})
    void book_thatCannotBeToldFromTheRest_isAProblem(String settings) throws IOException {
        write("shop.yaml", settings);
        write("pricing/labor.yaml", "kind: labor\n");

        assertThat(new RatesFolder(folder).version().problems()).extracting(Problem::code)
                .containsExactly(Code.UNREADABLE);
    }

    @Test
    void files_thatPapersAreMadeBy_andNoOthers() throws IOException {
        write("shop.yaml", "name: A\nlogo: logo.png\n");
        write("pricing/labor.yaml", "kind: labor\n");
        write("pricing/notes.txt", "no rates");
        write("pricing/schema/labor.schema.json", "{}");
        write("templates/paper.css.ftl", "b { background: url('seal.jpg') }");
        write("templates/parts/foot.ftlh", "foot");
        write("templates/.paper.css.ftl.swp", "an editor's");
        write("templates/paper.css.ftl~", "an editor's");
        write("logo.png", "logo");
        write("seal.jpg", "seal");
        write("holiday.jpg", "nobody names it");
        write("papers/draft.pdf", "draft");

        RatesVersion version = version();
        assertThat(version.files().keySet()).containsExactly("logo.png", "pricing/labor.yaml", "seal.jpg", "shop.yaml",
                "templates/paper.css.ftl", "templates/parts/foot.ftlh");
        RatesFolder copy = new RatesFolder(folder.resolve("copy"));
        assertThat(copy.write(version)).isEqualTo(Validated.valid(copy.folder()));
        assertThat(copy.version().orElseThrow().hash()).isEqualTo(version.hash());
        assertThat(copy.write(version).problems()).hasSize(6).extracting(Problem::code)
                .containsOnly(Code.ALREADY_EXISTS);
        write("holiday.jpg", "changed");
        write("pricing/notes.txt", "changed");
        assertThat(version().hash()).isEqualTo(version.hash());
        write("seal.jpg", "changed");
        assertThat(version().hash()).isNotEqualTo(version.hash());
    }

    @Test
    void folderThatIsNone_isAProblem() throws IOException {
        assertThat(new RatesFolder(folder).version().problems()).extracting(Problem::code)
                .containsExactly(Code.UNREADABLE);
        write("shop.yaml", "name: A\n");
        assertThat(new RatesFolder(folder).version().problems()).extracting(Problem::message).singleElement().asString()
                .contains("the rates cannot be read");
    }

    @Test
    void change_isToldFileByFileAndValueByValue() {
        RatesVersion before = version(
                "kind: labor\ngrades:\n  - {id: lead, hourly: 98.00}\n  - {id: helper, hourly: 58.00}\n", "one");
        RatesVersion after = version(
                "kind: labor\ngrades:\n  - {id: apprentice, hourly: 40.00}\n  - {id: lead, hourly: 108.00}\n", "two");

        List<RatesChange> changes = RatesChange.between(before, after);

        assertThat(changes).extracting(RatesChange::file).containsExactly("pricing/labor.yaml", "templates/a.ftlh");
        assertThat(changes.getFirst().values())
                .extracting(value -> value.path() + " " + value.before().orElse("-") + " "
                        + value.after().orElse("-"))
                .containsExactly("grades[lead].hourly 98.00 108.00", "grades[helper].id helper -",
                        "grades[helper].hourly 58.00 -", "grades[apprentice].id - apprentice",
                        "grades[apprentice].hourly - 40.00");
        assertThat(changes.getLast().values()).isEmpty();
        assertThat(RatesChange.between(before, before)).isEmpty();
        assertThat(RatesChange.between(before, RatesVersion.of(Map.of()))).extracting(RatesChange::kind)
                .containsExactly(RatesChange.Kind.REMOVED, RatesChange.Kind.REMOVED);
    }

    /** Two entries of one id stay apart. */
    @Test
    void change_inListWithAnIdTwice_isToldByPlace() {
        assertThat(RatesChange.between(version("a:\n  - {id: x, n: 1}\n  - {id: x, n: 2}\n", ""),
                version("a:\n  - {id: x, n: 1}\n  - {id: x, n: 3}\n", ""))).singleElement()
                .satisfies(change -> assertThat(change.values()).extracting(RatesChange.Value::path)
                        .containsExactly("a[2].n"));
    }

    private static RatesVersion version(String labor, String template) {
        return RatesVersion.of(Map.of("pricing/labor.yaml", labor.getBytes(StandardCharsets.UTF_8),
                "templates/a.ftlh", template.getBytes(StandardCharsets.UTF_8)));
    }
}
