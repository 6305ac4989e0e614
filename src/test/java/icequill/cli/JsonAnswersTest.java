package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import icequill.answer.json.AnswerCheck;
import icequill.answer.json.AnswersOfCommands;
import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer.OrderAnnotation;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;

/** Every command that has {@code --json} gives what its schema says, and the page on JSON names it. */
@TestMethodOrder(OrderAnnotation.class)
@Tag("wide")
class JsonAnswersTest {

    @TempDir
    private static Path other;
    private static BookShop shop;
    private static final String ADDRESS = "--street 4-Mill-Lane --city Alderton --region NY --postal-code 10999 --country US";
    private static final Set<String> RUN = new TreeSet<>();

    @BeforeAll
    static void billed() throws IOException {
        shop = BookShop.in(other.resolve("shop"), Database.SQLITE);
        Files.writeString(shop.folder().resolve("runs.csv"), runs());
        shop.write("quotes/staged.yaml", Files.readString(shop.folder().resolve("quotes/float-switch.yaml"))
                .replace("  deposit: 30\n", "  stages: [40, 40, 20]\n  retainage: 10\n")
                .replace("2026-05-20", "2026-05-21"));
        shop.write("visits/second-pump.yaml", Files.readString(shop.folder()
                .resolve("visits/warranty-pump-bakery.yaml")).replace("2026-06-02", "2026-06-12"));
        shop.write("answer.yaml", """
                format: 1
                form: visit
                site: crumb-lane-bakery
                asked: {call: crumb-lane-bakery-2026-12-29, by: Noor, at: 2026-12-29T08:00, symptom: Loud.}
                people: [{name: Ada Quill, grade: lead, arrived: 2026-12-29T09:00, left: 2026-12-29T10:00, on: repair}]
                machines: [{machine: proof-room, refrigerant: {added: 2, from: V-9, technician: Ada Quill}}]
                """);
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
            "recorded-visit | visit add visits/late-call.yaml",
            "recorded-visit | visit add visits/ten-minute-brushing.yaml",
            "recorded-visit | sale add pennon-wharf-taproom water-filter=2 --date 2026-05-20",
            "withdrawn-visit | visit withdraw ten-minute-brushing --reason Twice.",
            "visits | visit list",
            "taken-call | call take hotel-fernhill --by Bram --symptom Warm. --machine lobby-bar --limit 300",
            "call | call plan hotel-fernhill-2026-12-30 --person Ada --at 2026-12-30T15:00",
            "call | call change hotel-fernhill-2026-12-30 --symptom Warm!",
            "call | call approve hotel-fernhill-2026-12-30 --by Chef --limit 450",
            "call | call show hotel-fernhill-2026-12-30",
            "call | call withdraw hotel-fernhill-2026-12-30 --reason Runs.",
            "taken-call | call take crumb-lane-bakery --by Noor --symptom Loud. --at 2026-12-29T08:00",
            "recorded-visit | visit add answer.yaml",
            "call | call close crumb-lane-bakery-2026-12-29",
            "calls | call list",
            "price | price late-call",
            "price | price late-call --owner",
            "payment | payment add pennon-wharf-taproom 100.00 --date 2026-05-02",
            "written-paper | invoice draft late-call",
            "issued-papers | invoice issue late-call --date 2026-05-14 --dry-run",
            "issued-papers | invoice issue late-call --date 2026-05-14",
            "issued-papers | quote issue quotes/float-switch.yaml --date 2026-05-14",
            "issued-papers | quote issue quotes/crumb-lane-plan.yaml --date 2026-05-14",
            "next-installment | agreement next crumb-lane-bakery --date 2026-06-02",
            "issued-papers | invoice issue crumb-lane-bakery --installment 1 --date 2026-06-02",
            "payments | payment list",
            "payment | payment show PAYMENT",
            "payment | payment allot PAYMENT",
            "payment | payment withdraw PAYMENT --reason Typed.",
            "issued-papers | credit issue INV-2026-00001 --lines 3 --reason Late. --date 2026-06-03",
            "change-credit | credit propose INV-2026-00002 --changes crumb-lane-bakery",
            "found-papers | find INV",
            "found-papers | invoice list",
            "found-papers | credit list",
            "quotes | quote list",
            "quote-outcomes | quote outcomes --month 2026-05",
            "quote-standing | quote accept RQ-2026-00001 --by Ann --way mail --on 2026-05-18",
            "quote-standing | quote decline MQ-2026-00001 --reason price --on 2026-05-20",
            "job | job order RQ-2026-00001 --on 2026-05-18",
            "job | job ready RQ-2026-00001 --on 2026-05-18",
            "job | job show RQ-2026-00001",
            "jobs | job list",
            "recommended-repairs | job recommended",
            "issued-papers | quote issue quotes/float-switch.yaml --date 2026-05-14",
            "quote-standing | quote accept RQ-2026-00002 --by Ann --way mail --on 2026-05-18",
            "job | job done RQ-2026-00002 --visit late-call --on 2026-05-18",
            "issued-papers | job deposit RQ-2026-00001 --date 2026-06-03 --dry-run",
            "issued-papers | quote issue quotes/staged.yaml --date 2026-05-19",
            "quote-standing | quote accept RQ-2026-00003 --by Ann --way mail --on 2026-05-20",
            "issued-papers | job progress RQ-2026-00003 --date 2026-06-03",
            "job | job done RQ-2026-00003 --visit late-call --on 2026-05-20",
            "issued-papers | job release RQ-2026-00003 --date 2026-06-03",
            "job | job withdraw RQ-2026-00001 --reason Closed. --on 2026-05-18",
            "recorded-visit | visit add visits/warranty-pump-bakery.yaml",
            "claims | claim note warranty-pump-bakery --on 2026-06-03",
            "claim | claim send warranty-pump-bakery --on 2026-06-04",
            "claim | claim return warranty-pump-bakery --on 2026-06-05",
            "claim | claim pay warranty-pump-bakery 90.00 --on 2026-06-30",
            "claim | claim show warranty-pump-bakery",
            "refrigerant-log | refrigerant log",
            "claims | claim list",
            "recorded-visit | visit add visits/second-pump.yaml",
            "claims | claim note second-pump --on 2026-06-13",
            "claim | claim send second-pump --on 2026-06-14",
            "entry | contact add Mara --customer pennon-wharf-taproom --for bills --email mara@pennon.example",
            "mail-plan | mail write --month 2026-05 --dry-run",
            "mails | mail write INV-2026-00001",
            "mail | mail show INV-2026-00001.m1",
            "mails | mail send",
            "mail | mail found INV-2026-00001.m1 --did-not",
            "mails | mail send INV-2026-00001.m1",
            "mail | mail returned INV-2026-00001.m1 --why gone",
            "mail | mail again INV-2026-00001.m1",
            "mail | mail withdraw INV-2026-00001.m1 --reason post",
            "mail-recipients | mail recipients crumb-lane-bakery",
            "mails | mail list --all",
            "claim | claim refuse second-pump --reason Scale. --on 2026-06-30",
            "due-installments | invoice due --until 2026-06-02",
            "issued-papers | invoice due --until 2026-06-02 --issue --dry-run",
            "renewals | agreement renewals",
            "due-visits | visit due --date 2026-08-01",
            "person-calendar | visit calendar --person ADA --from 2026-07-01",
            "announcements | visit announce --from 2026-07-01",
            "proposed-days | visit days --from 2026-08-03",
            "shown | show INV-2026-00001",
            "shown | show crumb-lane-bakery",
            "shown | show late-call",
            "shown | show lobby-bar",
            "shown | paper show CN-2026-00001",
            "shown | invoice show INV-2026-00002",
            "shown | credit show CN-2026-00001",
            "shown | quote show MQ-2026-00001",
            "agreement-changing | agreement change hotel-fernhill --first-day 2026-10-01 --add main-kitchen --yes",
            "agreement | agreement show crumb-lane-bakery",
            "agreement | agreement order crumb-lane-bakery CL-77",
            "agreement | agreement notice A-2026-004 --way mail --sent 2026-12-05",
            "agreement | agreement renew A-2026-004 --agreed-by Noor",
            "agreement | agreement refuse A-2026-005 --way mail --on 2026-12-01",
            "agreement-transfer | agreement transfer A-2026-006 --to crumb-lane-bakery --on 2026-09-01 --yes",
            "agreement-ending | agreement end A-2026-007 --way mail --on 2026-12-01 --yes",
            "shown | visit show late-call",
            "reprint | paper reprint INV-2026-00001",
            "reprints | paper reprint --all",
            "paper-copies | paper reprint INV-2026-00001 --html",
            "rework | paper rework INV-2026-00001",
            "written-paper | visit record late-call",
            "written-paper | quote draft quotes/float-switch.yaml",
            "written-paper | quote draft quotes/crumb-lane-plan.yaml --date 2026-05-14",
            "margins | quote earnings quotes/crumb-lane-plan.yaml --date 2026-05-14",
            "price | quote earnings quotes/float-switch.yaml",
            "quote-figures | quote price quotes/crumb-lane-plan.yaml --date 2026-05-14",
            "quote-figures | quote price quotes/crumb-lane-plan.yaml --date 2026-05-14 --owner",
            "price | quote price quotes/float-switch.yaml --owner",
            "agreements | agreement list",
            "written-paper | agreement print crumb-lane-bakery --date 2026-05-20",
            "renewal | agreement renewal crumb-lane-bakery --date 2027-03-05",
            "written-paper | visit worksheet summer-cleaning-bakery",
            "timetable | visit timetable summer-cleaning-bakery",
            "written-paper | refrigerant record crumb-lane-bakery",
            "written-paper | customer statement pennon-wharf-taproom --date 2026-08-31",
            "written-paper | customer reminder pennon-wharf-taproom --date 2026-08-31",
            "comparison | compare quotes/crumb-lane-plan.yaml --date 2026-05-14 --years 2 --interval 4",
            "written-paper | compare quotes/crumb-lane-plan.yaml --date 2026-05-14 --owner",
            "brushing | brushing crumb-lane-bakery --date 2026-07-01",
            "fit | fit runs.csv",
            "hindsight | call review --date 2027-05-13",
            "entry | customer add mill --name Mill ADDRESS",
            "entry | site add lane --customer mill --name Lane --kind bakery --miles 3 --tax-place alder-county ADDRESS",
            "entry | site add back --customer mill --name Back --kind bakery --miles 3 --tax-place alder-county ADDRESS",
            "entry | machine add lane bar --model Cuber --where bar --make batch --form head --cooling air --harvest-rate 300 --connection hard-wired",
            "entry | machine add back cellar --model Cuber --where cellar --make batch --form head --cooling air --harvest-rate 300 --connection hard-wired",
            "entry | contact add Ana --customer mill --role owner --for bills",
            "entry | contact change Ana --customer mill --role cook",
            "contacts | contact list",
            "entry | contact remove Ana --customer mill",
            "entry | customer change mill --notes Pays.",
            "entry | customer show mill",
            "customers | customer list",
            "sites | site list",
            "entry | site show pennon-wharf-taproom",
            "entry | site change pennon-wharf-taproom --parking Rear.",
            "history | site history pennon-wharf-taproom",
            "site-card | site card pennon-wharf-taproom",
            "today | today --date 2026-05-20",
            "machines | machine list",
            "entry | machine show hotel-fernhill lobby-bar",
            "entry | machine change hotel-fernhill lobby-bar --serial X-1",
            "history | machine history hotel-fernhill lobby-bar",
            "merge | customer merge mill --into crumb-lane-bakery --dry-run",
            "merge | site merge lane --into back --dry-run",
            "forgotten-customer | customer forget mill --yes",
            "trail | audit trail",
            "audit | audit",
            "audit | backup DIR/book.zip",
            "exported-forms | export DIR/forms.yaml",
            "export | export DIR/book.json",
            "export | export DIR/papers.csv",
            "import | import DIR/forms.yaml --dry-run",
            "shop | shop show",
            "shop | shop change payment-days=30",
            "rates-versions | rates list",
            "rates-version | rates show",
            "earnings | visit earnings",
            "minutes | visit minutes",
            "day-prices | rates prices",
            "what-if | rates try",
            "raised-prices | rates raise labor=4:0.50 --from 2028-01-01 --yes",
            "adopted-rates | rates adopt --yes",
            "exported-rates | rates export VERSION DIR/rates",
            "recorded-visit | visit add visits/valve-repair-taproom.yaml",
            "issued-papers | invoice issue valve-repair-taproom --date 2026-12-01",
            "issued-papers | invoice reissue INV-2026-00005 --purchase-order PO-7 --due keep --reason Order. --date 2026-12-02",
            "problems | check"})
    void answer_isAsItsSchemaSays(String answer, String line) throws IOException {
        List<String> words = new ArrayList<>(List.of(line.replace("DIR", other.toString())
                .replace("ADDRESS", ADDRESS).replace("PAYMENT", payment(line)).replace("VERSION", version(line))
                .split(" ", -1)));
        words.replaceAll(word -> word.equals("ADA") ? "Ada Quill" : word);
        words.replaceAll(word -> Files.exists(shop.folder().resolve(word)) && word.contains(".")
                ? shop.folder().resolve(word).toString()
                : word);
        JsonNode json = shop.json(words.toArray(String[]::new));

        assertThat(AnswerCheck.problems(answer, json)).as(json.toPrettyString()).isEmpty();
        String command = AnswersOfCommands.read().getOrDefault(answer, List.of()).stream()
                .filter(name -> (line + " ").startsWith(name + " "))
                .max(Comparator.comparingInt(String::length)).orElse("");
        assertThat(command).as("what src/docs/json.md says of " + answer).isNotEmpty();
        RUN.add(command);
    }

    private static String payment(String line) {
        return line.contains("PAYMENT")
                ? shop.json("payment", "list").path("payments").get(0).path("id").asString()
                : "";
    }

    private static String version(String line) {
        return line.contains("VERSION")
                ? shop.json("rates", "list").path("versions").get(0).path("version").asString()
                : "";
    }

    @ParameterizedTest
    @CsvSource({"show nothing-such", "invoice issue nothing-such", "price nothing-such", "customer show nothing-such",
            "audit --against nothing-such", "import nothing-such.yaml", "find --from 2026-13-01",
            "quote show nothing-such"})
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
        JsonNode demo = FinishedDemo.told();
        assertThat(AnswerCheck.problems("made-demo", demo)).as(demo.toPrettyString()).isEmpty();
        Run asked = Run.typing("2026-05-21\nAna Ruiz\n1\n9:00\n10:20\n1\n\n\n\n\n\n\n1\n", BookShop.CLOCK, "visit",
                "new",
                "hotel-fernhill", "--shop", BookShop.in(other.resolve("asked"), Database.SQLITE).folder().toString(),
                "--json");
        assertThat(AnswerCheck.problems("recorded-visit", asked.json())).as(asked.err()).isEmpty();
        RUN.addAll(List.of("new", "restore", "demo", "visit new", "office"));

        List<String> all = new ArrayList<>();
        withJson(Main.commands(BookShop.CLOCK), "", all);

        assertThat(all).isSubsetOf(RUN);
    }

    private static void withJson(CommandLine line, String name, List<String> all) {
        line.getSubcommands().forEach((word, command) -> {
            if (command.getCommandSpec().findOption("--json") != null
                    && !command.getCommandSpec().usageMessage().hidden()) {
                all.add((name + " " + word).strip());
            }
            withJson(command, (name + " " + word).strip(), all);
        });
    }
}
