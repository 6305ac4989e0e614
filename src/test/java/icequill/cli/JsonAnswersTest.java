package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.answer.json.AnswerCheck;
import icequill.answer.json.AnswersOfCommands;
import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer.OrderAnnotation;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;

/** Every command that has {@code --json} gives what its schema says, and the page on JSON names it. */
@TestMethodOrder(OrderAnnotation.class)
class JsonAnswersTest {

    @TempDir
    private static Path other;
    private static BookShop shop;
    private static final Set<String> RUN = new TreeSet<>();

    @BeforeAll
    static void billed() throws IOException {
        shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        Files.writeString(shop.folder().resolve("runs.csv"), runs());
    }

    /** Twenty runs on the water's side, of which every other ended in a stop. */
    private static String runs() {
        StringBuilder table = new StringBuilder("machine,kind,side,from,until,ended\n");
        for (int i = 0; i < 20; i++) {
            table.append("m").append(i).append(",bakery,water,2025-01-03,2025-")
                    .append(String.format("%02d", 3 + i / 2))
                    .append(i % 2 == 0 ? "-20,stopped\n" : "-20,cleaned\n");
        }
        return table.toString();
    }

    /** In this order, since each goes by what the ones before it stored; DIR is a folder beside the shop. */
    @ParameterizedTest
    @Order(1)
    @CsvSource(delimiter = '|', value = {
            "visit | recorded-visit | visit visits/late-call.yaml",
            "visit | recorded-visit | visit visits/ten-minute-brushing.yaml",
            "visit | withdrawn-visit | visit --withdraw ten-minute-brushing --reason Twice.",
            "visit list | visits | visit list",
            "price | price | price late-call",
            "price | price | price late-call --owner",
            "payment add | payment | payment add pennon-wharf-taproom 100.00 --date 2026-05-02",
            "issue | issued-papers | issue late-call --date 2026-05-14 --dry-run",
            "issue | issued-papers | issue late-call --date 2026-05-14",
            "issue | issued-papers | issue --quote quotes/float-switch.yaml --date 2026-05-14",
            "issue | issued-papers | issue --quote quotes/crumb-lane-plan.yaml --date 2026-05-14",
            "issue | next-installment | issue --agreement crumb-lane-bakery --date 2026-06-02",
            "issue | issued-papers | issue --agreement crumb-lane-bakery --payment 1 --date 2026-06-02",
            "payment list | payments | payment list",
            "payment show | payment | payment show PAYMENT",
            "payment allot | payment | payment allot PAYMENT",
            "payment withdraw | payment | payment withdraw PAYMENT --reason Typed.",
            "credit | issued-papers | credit INV-2026-00001 --lines 3 --reason Late. --date 2026-06-03",
            "credit | change-credit | credit INV-2026-00002 --agreement crumb-lane-bakery",
            "find | found-papers | find INV", "show | shown | show INV-2026-00001", "show | shown | show CN-2026-00001",
            "show | shown | show INV-2026-00002", "show | shown | show MQ-2026-00001",
            "show | shown | show crumb-lane-bakery", "show | shown | show late-call", "show | shown | show lobby-bar",
            "reprint | reprint | reprint INV-2026-00001", "reprint | reprints | reprint --all",
            "reprint | paper-copies | reprint INV-2026-00001 --html",
            "reprint | rework | reprint INV-2026-00001 --rework",
            "invoice | written-paper | invoice late-call", "record | written-paper | record late-call",
            "quote | written-paper | quote quotes/float-switch.yaml",
            "quote | written-paper | quote quotes/crumb-lane-plan.yaml --date 2026-05-14",
            "quote | price | quote quotes/float-switch.yaml --owner",
            "quote | margins | quote quotes/crumb-lane-plan.yaml --date 2026-05-14 --owner",
            "agreement | written-paper | agreement crumb-lane-bakery --date 2026-05-20",
            "renewal | renewal | renewal crumb-lane-bakery --date 2027-03-05",
            "worksheet | written-paper | worksheet summer-cleaning-bakery",
            "plan | timetable | plan summer-cleaning-bakery",
            "statement | written-paper | statement pennon-wharf-taproom --date 2026-08-31",
            "reminder | written-paper | reminder pennon-wharf-taproom --date 2026-08-31",
            "compare | comparison | compare quotes/crumb-lane-plan.yaml --date 2026-05-14 --years 2 --interval 4",
            "compare | written-paper | compare quotes/crumb-lane-plan.yaml --date 2026-05-14 --owner",
            "brushing | brushing | brushing crumb-lane-bakery --date 2026-07-01",
            "fit | fit | fit runs.csv", "hindsight | hindsight | hindsight --date 2027-05-13",
            "customer add | entry | customer add mill --name Mill --street 4-Mill-Lane --city Alderton --region NY --postal-code 10999 --country US",
            "site add | entry | site add lane --customer mill --name Lane --kind bakery --miles 3 --tax-place alder-county --street 4-Mill-Lane --city Alderton --region NY --postal-code 10999 --country US",
            "site add | entry | site add back --customer mill --name Back --kind bakery --miles 3 --tax-place alder-county --street 4-Mill-Lane --city Alderton --region NY --postal-code 10999 --country US",
            "machine add | entry | machine add lane bar --model Cuber --where bar --make batch --form head --cooling air --harvest-rate 300 --connection hard-wired",
            "machine add | entry | machine add back cellar --model Cuber --where cellar --make batch --form head --cooling air --harvest-rate 300 --connection hard-wired",
            "customer change | entry | customer change mill --notes Pays.",
            "customer show | entry | customer show mill",
            "customer list | customers | customer list", "site list | sites | site list",
            "site show | entry | site show pennon-wharf-taproom",
            "site change | entry | site change pennon-wharf-taproom --parking Rear.",
            "site history | history | site history pennon-wharf-taproom",
            "machine list | machines | machine list",
            "machine show | entry | machine show hotel-fernhill lobby-bar",
            "machine change | entry | machine change hotel-fernhill lobby-bar --serial X-1",
            "machine history | history | machine history hotel-fernhill lobby-bar",
            "customer merge | merge | customer merge mill --into crumb-lane-bakery --dry-run",
            "site merge | merge | site merge lane --into back --dry-run",
            "customer forget | forgotten-customer | customer forget mill --yes",
            "trail | trail | trail", "audit | audit | audit", "backup | audit | backup DIR/book.zip",
            "export | exported-forms | export DIR/forms.yaml", "export | export | export DIR/book.json",
            "export | export | export DIR/papers.csv", "import | import | import DIR/forms.yaml --dry-run",
            "rates | rates-versions | rates", "rates show | rates-version | rates show",
            "rates adopt | adopted-rates | rates adopt --yes",
            "rates export | exported-rates | rates export VERSION DIR/rates",
            "check | problems | check"})
    void answer_isAsItsSchemaSays(String command, String answer, String line) throws IOException {
        List<String> words = new ArrayList<>(List.of(line.replace("DIR", other.toString())
                .replace("PAYMENT", payment(line)).replace("VERSION", version(line)).split(" ", -1)));
        words.replaceAll(word -> Files.exists(shop.folder().resolve(word)) && word.contains(".")
                ? shop.folder().resolve(word).toString()
                : word);
        JsonNode json = shop.json(words.toArray(String[]::new));

        assertThat(AnswerCheck.problems(answer, json)).as(json.toPrettyString()).isEmpty();
        assertThat(AnswersOfCommands.read().get(answer)).as("src/docs/json.md: " + answer)
                .contains(command);
        RUN.add(command);
    }

    private static String payment(String line) {
        return line.contains("PAYMENT")
                ? shop.json("payment", "list").path("payments").get(0).path("id").asString()
                : "";
    }

    private static String version(String line) {
        return line.contains("VERSION")
                ? shop.json("rates").path("versions").get(0).path("version").asString()
                : "";
    }

    @ParameterizedTest
    @CsvSource({"show nothing-such", "issue nothing-such", "price nothing-such", "customer show nothing-such",
            "audit --against nothing-such", "import nothing-such.yaml", "find --from 2026-13-01"})
    void problems_areAsTheirSchemaSays(String line) {
        List<String> words = new ArrayList<>(List.of(line.split(" ", -1)));
        words.add("--json");
        Run run = shop.run(words.toArray(String[]::new));

        if (run.status() == 3) {
            assertThat(AnswerCheck.problems(run.json().has("problems") && !run.json().has("papers")
                    ? "problems"
                    : run.json().has("findings") ? "audit" : "issued-papers", run.json()))
                    .as(run.out()).isEmpty();
        } else {
            assertThat(run.status()).isEqualTo(2);
        }
    }

    /** What neither runs above is run here: it makes shops. */
    @Test
    @Order(2)
    void everyCommandWithJson_isRun() throws IOException {
        JsonNode made = Run.of("new", other.resolve("made").toString(), "--json").json();
        assertThat(AnswerCheck.problems("made-shop", made)).isEmpty();
        JsonNode restored = BookShop.empty(other.resolve("again"), Database.SQLITE)
                .json("restore", other.resolve("book.zip").toString());
        assertThat(AnswerCheck.problems("audit", restored)).isEmpty();
        JsonNode demo = Run.of("demo", other.resolve("demo").toString(), "--json").json();
        assertThat(AnswerCheck.problems("made-demo", demo)).as(demo.toPrettyString()).isEmpty();
        RUN.addAll(List.of("new", "restore", "demo"));

        List<String> all = new ArrayList<>();
        withJson(Main.commands(BookShop.CLOCK), "", all);

        assertThat(all).isSubsetOf(RUN);
    }

    private static void withJson(CommandLine line, String name, List<String> all) {
        line.getSubcommands().forEach((word, command) -> {
            if (command.getCommandSpec().findOption("--json") != null) {
                all.add((name + " " + word).strip());
            }
            withJson(command, (name + " " + word).strip(), all);
        });
    }
}
