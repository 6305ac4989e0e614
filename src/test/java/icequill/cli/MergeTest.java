package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import icequill.ledger.store.Connections;
import icequill.office.register.DraftOffice;
import icequill.shop.ShopBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** Two customers, and two sites, that turn out to be one. */
@Tag("wide")
class MergeTest {

    private static final String[] LANE = {"--street", "4 Mill Lane", "--city", "Alderton", "--region", "NY",
            "--postal-code", "10999", "--country", "US"};

    @TempDir
    Path folder;

    /** The bakery was entered twice: mill, with one site; mill-2, with two visits at another, one billed, one not. */
    private BookShop twice(Database database) throws IOException {
        BookShop shop = BookShop.in(folder.resolve("shop"), database);
        shop.json(with(LANE, "customer", "add", "mill", "--name", "Mill Lane Bakery", "--contacts",
                "Ana Ruiz | for: bills", "--payment-days", "14", "--notes", "Pays after a call."));
        shop.json(with(LANE, "customer", "add", "mill-2", "--name", "Mill Ln Bakery", "--contacts",
                "Ana Ruiz | for: bills; Bo Hart | telephone: 607-555-0151", "--telephone", "607-555-0140",
                "--payment-days", "30", "--notes", "Closed on Mondays.", "--certificates",
                "ST-2 | kind: resale | state: NY | reason: ice | signed: 2026-01-02"));
        shop.json(with(LANE, "customer", "add", "branch", "--name", "Mill Branch", "--parent", "mill-2"));
        site(shop, "lane", "mill", "back-bar");
        site(shop, "lane-2", "mill-2", "cellar");
        shop.json("site", "change", "lane-2", "--parking", "rear dock", "--miles", "5", "--walk", "3", "--telephone",
                "607-555-0150");
        shop.write("visits/may.yaml", visit("2026-05-13"));
        shop.issue("may", "2026-05-14");
        shop.json("visit", "add", shop.write("visits/june.yaml", visit("2026-06-10")).toString());
        Files.delete(shop.folder().resolve("visits/june.yaml"));
        return shop;
    }

    private static void site(BookShop shop, String id, String customer, String machine) {
        shop.json(with(LANE, "site", "add", id, "--customer", customer, "--name", "Mill Lane", "--kind", "bakery",
                "--miles", "3", "--tax-place", "alder-county"));
        shop.json("machine", "add", id, machine, "--model", "Cuber 300", "--where", "back", "--make", "batch", "--form",
                "head", "--cooling", "air", "--harvest-rate", "300", "--connection", "hard-wired");
    }

    private static String visit(String day) {
        return """
                format: 1
                site: lane-2
                people:
                  - {name: Rosa, grade: lead, arrived: %sT09:00, left: %sT10:00, on: cleaning}
                machines:
                  - {machine: cellar, correction: Brushed the condenser.}
                """.formatted(day, day);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void customersThatAreOne_sitesAndAccountsGoAlong_papersStay(Database database) throws IOException {
        BookShop shop = twice(database);
        byte[] paper = Files.readAllBytes(pdf(shop));

        JsonNode dry = shop.json("customer", "merge", "mill-2", "--into", "mill", "--dry-run");
        assertThat(shop.json("customer", "show", "mill-2").path("sites")).hasSize(1);
        JsonNode done = shop.json("customer", "merge", "mill-2", "--into", "mill", "--yes");

        assertThat(texts(moved(dry, "sites"))).containsExactly("lane-2");
        assertThat(texts(moved(done, "accounts"))).containsExactly("branch");
        assertThat(done.path("papers").asInt()).isEqualTo(1);
        assertThat(texts(done.path("taken"))).containsExactlyInAnyOrder("telephone", "contacts", "certificates",
                "notes");
        assertThat(done.path("differs").valueStream()
                .map(one -> one.path("key").asString() + " " + one.path("from").asString() + " "
                        + one.path("into").asString()))
                .contains("name Mill Ln Bakery Mill Lane Bakery", "paymentDays 30 14");
        JsonNode mill = shop.json("customer", "show", "mill");
        assertThat(texts(mill.path("sites"))).containsExactly("lane", "lane-2");
        assertThat(texts(mill.path("merged"))).containsExactly("mill-2");
        assertThat(texts(mill.path("papers"))).containsExactly("INV-2026-00001");
        assertThat(mill.path("form").path("contacts")).hasSize(2);
        assertThat(mill.path("form").path("notes").asString()).isEqualTo("Pays after a call.\nClosed on Mondays.");
        assertThat(mill.path("form").path("paymentDays").asInt()).isEqualTo(14);
        assertThat(shop.json("customer", "show", "branch").path("form").path("parent").asString())
                .isEqualTo("mill");
        assertThat(shop.run("customer", "list").out()).doesNotContain("mill-2");
        for (String[] line : List.of(new String[]{"customer", "show", "mill-2"},
                new String[]{"customer", "change", "mill-2", "--payment-days", "1"},
                with(LANE, "customer", "add", "mill-2", "--name", "Mill"),
                new String[]{"customer", "merge", "mill-2", "--into", "mill"})) {
            assertThat(shop.problems(line)).singleElement().asString()
                    .contains("customer \"mill-2\" was merged into \"mill\" on 2026-12-30", "(mill, which");
        }
        assertThat(Files.readAllBytes(pdf(shop))).isEqualTo(paper);
        Path all = folder.resolve("all.json");
        shop.json("export", all.toString());
        assertThat(Files.readString(all)).contains("\"mergedInto\":\"mill\"");
        assertThat(shop.json("audit", "trail", "lane-2").path("trail").get(0).toString()).contains(
                "\"event\":\"merged\"",
                "mill-2", "\"mill\"");
        assertThat(shop.json("find", "Mill Ln Bakery").path("papers")).hasSize(1);
        assertThat(shop.json("show", "INV-2026-00001").toString()).contains("Mill Ln Bakery");
        assertThat(shop.json("invoice", "issue", "june", "--date", "2026-12-30").path("papers").get(0).path("where")
                .asString())
                .contains("Mill Lane Bakery");
        assertThat(shop.run("audit").status()).isZero();
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void sitesThatAreOne_machinesAndVisitsGoAlong_papersStay(Database database) throws IOException {
        BookShop shop = twice(database);
        shop.json("customer", "merge", "mill-2", "--into", "mill", "--yes");

        DraftOffice drafts = new DraftOffice(ShopBook.of(shop.folder(), Clock.fixed(Instant.EPOCH, ZoneOffset.UTC)));
        drafts.keep(new DraftOffice.Begun("begun-before-the-merge", "visit", Optional.of("lane-2"), ""), "", Map.of())
                .orElseThrow();

        JsonNode done = shop.json("site", "merge", "lane-2", "--into", "lane", "--yes");

        assertThat(drafts.find("begun-before-the-merge").orElseThrow().site()).contains("lane");
        assertThat(texts(moved(done, "machines"))).containsExactly("cellar");
        assertThat(texts(moved(done, "visits"))).containsExactly("may", "june");
        assertThat(texts(done.path("taken"))).containsExactlyInAnyOrder("telephone", "parking");
        assertThat(done.path("differs").valueStream().map(one -> one.path("key").asString()))
                .containsExactlyInAnyOrder("miles", "layout.walk");
        JsonNode lane = shop.json("site", "show", "lane");
        assertThat(lane.path("form").path("machines").valueStream().map(machine -> machine.path("id").asString()))
                .containsExactly("back-bar", "cellar");
        assertThat(texts(lane.path("merged"))).containsExactly("lane-2");
        assertThat(lane.path("form").path("parking").asString()).isEqualTo("rear dock");
        assertThat(lane.path("form").path("miles").asInt()).isEqualTo(3);
        assertThat(shop.problems("site", "change", "lane-2", "--parking", "x")).singleElement().asString()
                .contains("site \"lane-2\" was merged into \"lane\"");
        JsonNode june = shop.json("invoice", "issue", "june", "--date", "2026-12-30").path("papers").get(0);
        assertThat(june.path("where").asString()).contains("Mill Lane Bakery");
        // What was billed before still says the site that it was; issued anew, it is found as what that is now.
        shop.json("credit", "issue", "INV-2026-00001", "--reason", "Wrong price.", "--date", "2026-12-30");
        assertThat(shop.json("invoice", "issue", "may", "--date", "2026-12-30").path("papers")).hasSize(1);
        assertThat(shop.run("price", shop.folder().resolve("visits/may.yaml").toString()).status()).isZero();
        assertThat(shop.run("audit").status()).isZero();
    }

    @Test
    void whatCannotBeOne_isRefused() throws IOException {
        BookShop shop = twice(Database.SQLITE);
        shop.json("machine", "add", "lane", "cellar", "--model", "Cuber 300", "--where", "back", "--make", "batch",
                "--form", "head", "--cooling", "air", "--harvest-rate", "300", "--connection", "hard-wired");

        assertThat(shop.problems("site", "merge", "lane-2", "--into", "lane", "--dry-run"))
                .anySatisfy(text -> assertThat(text).contains("belongs to customer \"mill-2\"",
                        "first: icequill customer merge"))
                .anySatisfy(text -> assertThat(text).contains("both sites have a machine \"cellar\""));
        assertThat(shop.problems("customer", "merge", "mill", "--into", "mill", "--yes").getFirst())
                .contains("and itself");
        assertThat(shop.problems("customer", "merge", "mill-3", "--into", "mill", "--yes").getFirst())
                .contains("did you mean \"mill-2\"?");
        shop.json(with(LANE, "customer", "add", "leaf", "--name", "Leaf", "--parent", "branch"));
        assertThat(shop.problems("customer", "merge", "mill-2", "--into", "leaf", "--yes").getFirst())
                .contains("belongs to an account that belongs to \"mill-2\"");
        shop.json("customer", "merge", "mill-2", "--into", "branch", "--yes");
        assertThat(shop.json("customer", "show", "branch").path("form").has("parent")).isFalse();
        assertThat(shop.run("audit").status()).isZero();
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void backupOfMerged_isRestoredWithWhatWasMerged(Database database) throws IOException {
        BookShop shop = twice(Database.SQLITE);
        shop.json("customer", "merge", "mill-2", "--into", "mill", "--yes");
        shop.json("site", "merge", "lane-2", "--into", "lane", "--yes");
        Path backup = folder.resolve("monday.backup");
        shop.json("backup", backup.toString());
        BookShop other = BookShop.empty(folder.resolve("other"), database);

        other.json("restore", backup.toString());

        assertThat(other.json("customer", "show", "mill")).isEqualTo(shop.json("customer", "show", "mill"));
        assertThat(other.json("site", "show", "lane")).isEqualTo(shop.json("site", "show", "lane"));
        assertThat(other.run("audit").status()).isZero();
    }

    /** What was kept of the one that went is forgotten with the survivor. */
    @Test
    void forgottenSurvivor_takesTheMergedWithHim() throws IOException {
        BookShop shop = twice(Database.SQLITE);
        shop.json("invoice", "issue", "june", "--date", "2026-12-30");
        shop.json("customer", "merge", "mill-2", "--into", "mill", "--yes");
        shop.json("site", "merge", "lane-2", "--into", "lane", "--yes");
        shop.write("notes.txt", "Mill Ln Bakery: ring Bo Hart; lane-2 is closed.\n");

        assertThat(texts(shop.json("customer", "forget", "mill", "--yes").path("files"))).contains("notes.txt");
        try (Connections connections = Connections.to(Database.SQLITE.place(shop.folder()))) {
            String left = connections.reader().withHandle(handle -> Stream
                    .of("customer", "customer_contact", "customer_certificate", "site", "machine", "trail_value")
                    .flatMap(table -> handle.createQuery("SELECT * FROM " + table).mapToMap().list().stream())
                    .map(Object::toString).collect(Collectors.joining("\n")));
            assertThat(left).doesNotContain("Ln Bakery", "Bo Hart", "607-555", "Mondays", "rear dock");
        }
        assertThat(shop.run("audit").status()).isZero();
    }

    private static Path pdf(BookShop shop) throws IOException {
        try (Stream<Path> files = Files.walk(shop.folder().resolve("papers/issued"))) {
            return files.filter(file -> file.toString().endsWith("INV-2026-00001.pdf")).findFirst().orElseThrow();
        }
    }

    private static JsonNode moved(JsonNode merged, String what) {
        return merged.path("moved").valueStream().filter(one -> one.path("what").asString().equals(what)).findFirst()
                .orElseThrow().path("ids");
    }

    private static List<String> texts(JsonNode list) {
        return list.valueStream().map(JsonNode::asString).toList();
    }

    private static String[] with(String[] more, String... begin) {
        List<String> line = new ArrayList<>(List.of(begin));
        line.addAll(List.of(more));
        return line.toArray(String[]::new);
    }
}
