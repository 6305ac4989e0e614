package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import icequill.cli.CommandsTest.Run;
import icequill.cli.terminal.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** One grammar: a noun and a verb, or a verb by itself; whatever names a thing names it everywhere. */
@Tag("wide")
class GrammarTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2027-07-01T15:00:00Z"), ZoneOffset.UTC);
    private static final Path TABLE = Path.of("src/test/resources/cli/grammar.txt");
    private static final Pattern FILE = Pattern.compile("[\\w./-]+\\.(json|csv|yaml|ics|zip|txt|pdf)");
    private static final Pattern COMMAND = Pattern.compile("icequill ([a-z]+)(?: ([a-z]+))?");
    /** What needs another disk, another shop or a version of its own, or serves until it is stopped. */
    private static final Set<String> ELSEWHERE = Set.of("backup", "restore", "rates export", "rates show", "demo",
            "new", "visit new", "office",
            "fit", "check", "call close", "job done", "job withdraw", "job progress", "job release",
            "agreement transfer", "claim pay", "claim refuse", "mail again", "mail found", "mail returned", "mail show",
            "mail withdraw");

    private static final Set<String> BEFORE_BILLING = Set.of("icequill invoice issue", "icequill visit withdraw");

    /** What the commands need besides, once they are told of what. */
    private static final Map<String, String> NEEDED = Map.ofEntries(Map.entry("visit withdraw", "--reason Twice."),
            Map.entry("invoice reissue", "--due keep --purchase-order PO-7 --reason Wrong. --dry-run"),
            Map.entry("credit issue", "--reason Twice. --dry-run"),
            Map.entry("credit propose", "--changes hotel-fernhill"),
            Map.entry("payment add", "1.00 --date 2027-06-30"), Map.entry("payment withdraw", "--reason Twice."),
            Map.entry("customer merge", "--into fernhill-hotels --dry-run"),
            Map.entry("site merge", "--into hotel-fernhill --dry-run"),
            Map.entry("contact add", "--customer fernhill-hotels"),
            Map.entry("contact change", "--customer fernhill-hotels --role owner"),
            Map.entry("contact remove", "--customer fernhill-hotels"), Map.entry("machine add", "lobby-bar"),
            Map.entry("machine change", "lobby-bar --condition worn"),
            Map.entry("customer change", "--notes Pays."), Map.entry("site change", "--notes Quiet."),
            Map.entry("machine show", "lobby-bar"),
            Map.entry("machine history", "lobby-bar"), Map.entry("rates export", "VERSION"));

    private static final int WIDEST = 150;

    @TempDir
    static Path folder;

    private static Path shop = Path.of("");
    private static Path fresh = Path.of("");

    @BeforeAll
    static void shops() throws IOException {
        shop = FinishedDemo.copy(folder.resolve("shop"));
        fresh = folder.resolve("fresh");
        Run.of("new", fresh.toString(), "--demo");
        for (String name : List.of("june-visit", "july-visit")) {
            Run.at(CLOCK, "export", file(name + ".yaml"), "late-call", "--shop", fresh.toString());
            Path form = Path.of(file(name + ".yaml"));
            Files.writeString(form, Files.readString(form).replaceFirst("(?m)^id: .*$", "id: " + name)
                    .replace("2026-05-13", name.equals("june-visit") ? "2027-06-07" : "2027-06-09"));
            Run.at(CLOCK, "visit", "add", form.toString(), "--shop", fresh.toString());
        }
        for (String name : List.of("today", "first-visit")) {
            Run.at(CLOCK, "export", file(name + ".yaml"), "late-call", "--shop", shop.toString());
            Path form = Path.of(file(name + ".yaml"));
            Files.writeString(form, Files.readString(form).replaceFirst("(?m)^id: .*$", "id: " + name)
                    .replace("2026-05-13", name.equals("today") ? "2027-06-01" : "2027-06-03"));
        }
        Run.at(CLOCK, "export", file("site.yaml"), "hotel-fernhill", "--shop", shop.toString());
        Files.writeString(Path.of(file("customers.csv")), "customer,name\nfernhill-hotels,Fernhill Hotels\n");
        Files.writeString(Path.of(file("sites.csv")), "site,parking\nhotel-fernhill,rear dock\n");
        Files.writeString(Path.of(file("machines.csv")),
                "site,machine,condition\nhotel-fernhill,lobby-bar,plating worn\n");
        Run.at(CLOCK, "mail", "write", "INV-2026-00008", "--shop", shop.toString());
        Run.at(CLOCK, "customer", "add", "mill-lane-2", "--name", "Mill Lane Bakery", "--street", "4 Mill Lane",
                "--city", "Alderton", "--region", "NY", "--postal-code", "10999", "--country", "US", "--shop",
                shop.toString());
    }

    private static String file(String name) {
        return folder.resolve(name).toString();
    }

    static Stream<String> commands() {
        return CommandLines.all().stream().map(CommandLines::name);
    }

    @ParameterizedTest
    @MethodSource("commands")
    void help_hasAnExample(String command) {
        Run run = Run.of((command + " --help").split(" ", -1));

        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("Usage: icequill " + command, "Example");
        assertThat(CommandLines.examples(of(command))).isNotEmpty()
                .allSatisfy(line -> assertThat(line + " ").startsWith("icequill " + command + " "));
    }

    static Stream<Arguments> examples() {
        return CommandLines.all().stream().filter(command -> !ELSEWHERE.contains(CommandLines.name(command)))
                .flatMap(command -> CommandLines.examples(command).stream()
                        .filter(line -> !line.contains("*") && !line.contains("--against")
                                && !line.contains("noon-visit"))
                        .map(line -> Arguments.of(line, command.getCommandSpec())));
    }

    /** In the demo, whose names they use; what bills visits, before any is billed. */
    @ParameterizedTest
    @MethodSource("examples")
    void example_ofHelp_runs(String line, CommandSpec command) {
        List<String> words = new ArrayList<>();
        for (String word : CommandLines.words(line)) {
            words.add(FILE.matcher(word).matches() ? file(word) : word);
        }
        if (command.findOption("--shop") != null) {
            words.addAll(List.of("--shop",
                    (BEFORE_BILLING.contains(command.qualifiedName()) ? fresh : shop).toString()));
        }
        boolean asks = command.findOption("--yes") != null && !words.contains("--dry-run")
                && !words.contains("--yes");

        Run run = Run.at(CLOCK, words.toArray(String[]::new));

        if (asks && run.status() == ExitCode.PROBLEMS.status()) {
            assertThat(run.err()).as(line).contains("--yes");
            words.add("--yes");
            run = Run.at(CLOCK, words.toArray(String[]::new));
        }
        assertThat(run.status()).as(line + "\n" + run.out() + run.err()).isZero();
    }

    /** Wherever the program, its pages or its help name a command, there is one. */
    @Test
    void everyCommandThatIsNamed_isThere() throws IOException {
        CommandLine program = Main.commands(Clock.systemUTC());
        List<String> wrong = new ArrayList<>();
        for (Path root : List.of(Path.of("src/main/java"), Path.of("src/main/resources"), Path.of("src/docs"),
                Path.of("templates"), Path.of("README.md"), Path.of("DEVELOPERS.md"))) {
            try (Stream<Path> files = Files.walk(root)) {
                for (Path file : files.filter(GrammarTest::isText).toList()) {
                    Matcher named = COMMAND.matcher(Files.readString(file).replaceAll("\\s+", " "));
                    while (named.find()) {
                        unknown(program, named).ifPresent(line -> wrong.add(file + ": " + line));
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static Optional<String> unknown(CommandLine program, Matcher named) {
        CommandLine noun = program.getSubcommands().get(named.group(1));
        boolean isNoun = noun != null && !noun.getSubcommands().isEmpty() && !named.group(1).equals("audit");
        boolean isThere = noun != null
                && (!isNoun || named.group(2) == null || noun.getSubcommands().containsKey(named.group(2)));
        return isThere ? Optional.empty() : Optional.of(named.group());
    }

    private static boolean isText(Path file) {
        return file.toString().matches(".*\\.(java|md|txt|yaml|json|properties|ftlh)")
                && !file.endsWith("changes.md") && !file.getFileName().toString().equals("package-info.java");
    }

    /** What each command makes of an id, a number, a file, nothing and nonsense: exit status and first line. */
    @Test
    void table_ofCommandsByWhatNamesThings() throws IOException {
        Path place = FinishedDemo.copy(folder.resolve("table"));
        Map<String, String> given = new LinkedHashMap<>();
        given.put("nothing", "");
        given.put("nonsense", "no-such-thing");
        List<String> rows = new ArrayList<>();
        for (CommandLine command : CommandLines.all()) {
            String name = CommandLines.name(command);
            if (Set.of("demo", "new", "office", "check", "fit", "form", "import", "export", "backup", "restore",
                    "audit",
                    "audit trail").contains(name)) {
                continue;
            }
            for (Map.Entry<String, String> one : named(command, given).entrySet()) {
                rows.add(row(name, one, NEEDED.getOrDefault(name, ""), place));
            }
        }
        String table = String.join("\n", rows) + "\n";
        if (Boolean.getBoolean("golden.write")) {
            Files.createDirectories(TABLE.getParent());
            Files.writeString(TABLE, table, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING);
        }
        assertThat(table).isEqualTo(Files.readString(TABLE));
    }

    private static Map<String, String> named(CommandLine command, Map<String, String> always) {
        Map<String, String> given = new LinkedHashMap<>(always);
        String label = command.getCommandSpec().positionalParameters().stream().findFirst()
                .map(parameter -> parameter.paramLabel()).orElse("");
        switch (label) {
        case "VISIT" -> {
            given.put("id", "late-call");
            given.put("file", file("today.yaml"));
        }
        case "NAME" -> {
            given.put("id", "late-call");
            given.put("file", file("first-visit.yaml"));
            given.put("number", "INV-2026-00003");
        }
        case "AGREEMENT" -> {
            given.put("id", "crumb-lane-bakery");
            given.put("number", "A-2026-004");
        }
        case "FORM" -> given.put("id", "float-switch");
        case "REQUEST" -> given.put("id", "crumb-lane-plan");
        case "NUMBER" -> {
            given.put("number", "INV-2026-00003");
            given.put("count", "3");
            given.put("file", "papers/issued/INV-2026/INV-2026-00003.pdf");
        }
        case "CUSTOMER" -> given.put("id", "fernhill-hotels");
        case "SITE" -> given.put("id", "hotel-fernhill");
        default -> {
        }
        }
        return given;
    }

    private static String row(String name, Map.Entry<String, String> given, String needed, Path place) {
        List<String> line = new ArrayList<>(List.of(name.split(" ", -1)));
        if (!given.getValue().isEmpty()) {
            line.add(given.getValue());
            Stream.of(needed.split(" ", -1)).filter(word -> !word.isEmpty()).forEach(line::add);
        }
        line.addAll(List.of("--shop", place.toString()));
        Run run = Run.at(CLOCK, line.toArray(String[]::new));
        String said = (run.out() + run.err()).lines().findFirst().orElse("").replace(place.toString(), "SHOP")
                .replace(folder.toString(), "HERE").replaceAll("\\b[0-9a-f]{16}\\b", "VERSION")
                .replaceAll(" +", " ").strip();
        return name + " | " + given.getKey() + " | " + run.status() + " | "
                + said.substring(0, Math.min(WIDEST, said.length()));
    }

    private static CommandLine of(String name) {
        return CommandLines.all().stream().filter(command -> CommandLines.name(command).equals(name)).findFirst()
                .orElseThrow();
    }
}
