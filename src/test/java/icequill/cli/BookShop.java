package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import icequill.ledger.store.BookPlace;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** The invented shop with a book, worked on by commands. */
record BookShop(Path folder) {

    /** A new one whose book is in a database. */
    static BookShop in(Path folder, Database database) throws IOException {
        BookShop shop = new BookShop(DemoShop.in(folder, database));
        if (database == Database.POSTGRESQL) {
            shop.json("rates", "adopt", "--yes");
        }
        return shop;
    }

    /** One that holds nothing yet. */
    static BookShop empty(Path folder, Database database) throws IOException {
        DemoShop.files(folder);
        if (database.place(folder) instanceof BookPlace.OnServer(String url, Path papers)) {
            DemoShop.onServer(folder, url);
        }
        return new BookShop(folder);
    }

    /** Two offices with folders of their own that share a book on a server, which has customers and sites. */
    static List<BookShop> offices(Path folder) throws IOException {
        BookShop north = new BookShop(DemoShop.in(folder.resolve("north"), Database.POSTGRESQL));
        Path settings = north.folder().resolve("shop.yaml");
        String shared = Files.readString(settings);
        Files.writeString(settings, shared.replace("book:\n", "book:\n  office: north\n"));
        BookShop south = new BookShop(DemoShop.files(folder.resolve("south")));
        Files.writeString(south.folder().resolve("shop.yaml"), shared.replace("book:\n", "book:\n  office: south\n"));
        return List.of(north, south);
    }

    /** Run at the end of the year of the shop's visits, unless told otherwise. */
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-30T17:00:00Z"), ZoneOffset.UTC);

    Run run(String... args) {
        return runAt(CLOCK, args);
    }

    Run runAt(Clock clock, String... args) {
        List<String> line = new ArrayList<>(List.of(args));
        line.add("--shop");
        line.add(folder.toString());
        return Run.at(clock, line.toArray(String[]::new));
    }

    /** A run that must go well, as JSON. */
    JsonNode json(String... args) {
        List<String> line = new ArrayList<>(List.of(args));
        line.add("--json");
        Run run = run(line.toArray(String[]::new));
        assertThat(run.status()).as(String.join(" ", args) + run.out() + run.err()).isZero();
        return run.json();
    }

    /** The problems of a run that must have some. */
    List<String> problems(String... args) {
        List<String> line = new ArrayList<>(List.of(args));
        line.add("--json");
        Run run = run(line.toArray(String[]::new));
        assertThat(run.status()).as(String.join(" ", args) + run.out() + run.err()).isEqualTo(3);
        List<String> texts = new ArrayList<>();
        run.json().path("problems").forEach(problem -> texts.add(problem.path("file").asString("") + ":"
                + problem.path("line").asInt(0) + ": " + problem.path("path").asString("") + ": "
                + problem.path("message").asString() + " (" + problem.path("allowed").asString("") + ")"));
        return texts;
    }

    /** What an audit found, on one line as the screen has it. */
    static String finding(JsonNode problem) {
        return new Problem(Code.MISSING, new Place(problem.path("file").asString(""), problem.path("line").asInt(0),
                problem.path("path").asString("")), problem.path("message").asString(),
                problem.path("allowed").asString("")).text();
    }

    /** What an audit finds, which must be something. */
    List<String> problemsOfAudit() {
        Run run = run("audit", "--json");
        assertThat(run.status()).isEqualTo(3);
        List<String> texts = new ArrayList<>();
        run.json().path("findings").forEach(finding -> texts.add(finding(finding)));
        return texts;
    }

    /** Records a visit of the folder, and issues its invoice. */
    JsonNode issue(String visit, String date) {
        json("visit", "add", folder.resolve("visits/" + visit + ".yaml").toString());
        return json("invoice", "issue", visit, "--date", date).path("papers").get(0);
    }

    Path write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }
}
