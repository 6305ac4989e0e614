package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.cli.CommandsTest.Run;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** What the owner reads, on the screen and as data, is said in full: no key and no place for a detail is left in it. */
class OwnerScreenTest {

    /** The key of a sentence, as words files have it: at least two words with a point between them. */
    private static final String KEY = "(?s).*\\b(owner|reason|table|earnings|plan|unit|each|outcome|total)\\.[a-z].*";

    @TempDir
    static Path folder;

    @BeforeAll
    static void shop() {
        DemoShop.in(folder);
    }

    @ParameterizedTest
    @CsvSource({"price visits/late-call.yaml --how --owner",
            "price visits/packs-and-discount-mercado.yaml --how --owner",
            "price visits/included-visit-hotel.yaml --how --owner", "quote earnings crumb-lane-plan",
            "quote earnings fernhill-plan",
            "quote earnings plan-mercado", "quote earnings float-switch",
            "visit timetable autumn-condensers-hotel"})
    void commandsOfTheOwner_sayWholeSentences(String line) {
        for (String language : List.of(" --lang en", " --lang es")) {
            List<String> words = new ArrayList<>(
                    List.of((line.replaceAll(" visits/", " " + folder + "/visits/") + language).split(" ")));
            words.addAll(List.of("--shop", folder.toString()));

            Run screen = Run.of(words.toArray(String[]::new));
            words.add("--json");
            Run data = Run.of(words.toArray(String[]::new));

            assertThat(screen.status()).as(screen.err()).isZero();
            assertThat(screen.out()).as(line).isNotBlank().doesNotContain("{", "}").doesNotMatch(KEY);
            assertThat(texts(data.json())).as(line).isNotEmpty().allSatisfy(
                    text -> assertThat(text).doesNotContain("{", "}").doesNotMatch(KEY));
        }
    }

    /** 46.50 an hour for 96 minutes is 74.40. */
    @Test
    void plans_costs_saidInTheShopsLanguage() {
        String english = Run.of("quote", "earnings", "plan-mercado", "--shop", folder.toString()).out();
        String spanish = Run.of("quote", "earnings", "crumb-lane-plan", "--lang", "es", "--shop", folder.toString())
                .out().replace('\u00a0', ' ');

        assertThat(english).contains("costs of a year", "of price").contains("wage 46.50 an hour, pricing/labor.yaml:");
        assertThat(spanish).contains("96 min × 46.50/h ÷ 60 = 74.40; salario 46.50 por hora, pricing/labor.yaml:",
                "costos de un año", "del precio").doesNotContain("a year", "minutes of work");
    }

    private static List<String> texts(JsonNode node) {
        return node.isString()
                ? List.of(node.asString())
                : node.valueStream().flatMap(each -> texts(each).stream()).toList();
    }
}
