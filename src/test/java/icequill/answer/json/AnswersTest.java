package icequill.answer.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Names in JSON are promised to stay: the schemas and the page that are checked in are those of the records. After a wanted change
 * {@code -Danswers.write=true} writes them anew; then read their diff.
 */
class AnswersTest {

    private static final boolean WRITE = Boolean.getBoolean("answers.write");
    private static final Path PAGE = Path.of("src/docs/json.md");
    private static final String MADE = "<!-- From here on made from the records by AnswersTest. -->\n\n";
    private static final JsonMapper MAPPER = JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    static Stream<String> names() {
        return Answers.byName().keySet().stream();
    }

    static Path schema(String name) {
        return Path.of("src/docs/json", name + ".schema.json");
    }

    private static ObjectNode made(String name) {
        return AnswerSchema.of(name, Answers.byName().get(name));
    }

    @ParameterizedTest
    @MethodSource("names")
    void schema_isThatOfTheRecord(String name) throws IOException {
        String made = MAPPER.writeValueAsString(made(name)).replace("\r\n", "\n") + "\n";
        if (WRITE) {
            Files.writeString(schema(name), made);
        }

        assertThat(schema(name)).hasContent(made);
    }

    @Test
    void folder_hasNoOtherSchemas() throws IOException {
        try (Stream<Path> files = Files.list(PAGE.resolveSibling("json"))) {
            assertThat(files.map(file -> file.getFileName().toString().replace(".schema.json", "")))
                    .containsExactlyInAnyOrderElementsOf(Answers.byName().keySet());
        }
    }

    @Test
    void page_saysEveryKey() throws IOException {
        String page = Files.readString(PAGE);
        String head = page.substring(0, page.indexOf(MADE) + MADE.length());
        Map<String, ObjectNode> schemas = new LinkedHashMap<>();
        names().forEach(name -> schemas.put(name, made(name)));
        String made = head + new AnswerPage(schemas).text();
        if (WRITE) {
            Files.writeString(PAGE, made);
        }

        assertThat(Files.readString(PAGE)).isEqualTo(made);
    }

    @Test
    void page_saysWhichCommandsGiveEachAnswer() throws IOException {
        assertThat(AnswersOfCommands.read().keySet()).isEqualTo(Answers.byName().keySet());
    }
}
