package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import icequill.ledger.store.BookPlace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** The database is lost, and only the PDFs are left: the book is made again out of them, with the same seals. */
@Tag("wide")
class FromPapersAttackTest {

    @TempDir
    private Path other;

    @ParameterizedTest
    @EnumSource(Database.class)
    void lostDatabase_isMadeAgainFromThePapers(Database database) throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), database);
        shop.issue("late-call", "2026-05-14");
        shop.json("quote", "issue", "quotes/float-switch.yaml", "--date", "2026-05-14");
        shop.json("invoice", "reissue", "INV-2026-00001", "--purchase-order", "PO-9", "--due", "keep", "--reason",
                "Wrong order.", "--date", "2026-05-20");
        JsonNode before = shop.json("audit").path("series");
        List<Path> papers = pdfs(shop);
        List<byte[]> bytes = papers.stream().map(FromPapersAttackTest::read).toList();
        lose(shop, database);

        Run issued = shop.run("invoice", "issue", "late-call");
        assertThat(issued.status()).isEqualTo(3);
        assertThat(issued.err()).contains("issued papers in");
        Run restored = shop.run("restore", "--from-papers", "--json");

        assertThat(findings(restored)).containsExactly(
                "customer \"pennon-wharf-taproom\" is known by what its papers say only (the rest entered again)",
                "site \"pennon-wharf-taproom\" is known by what its papers say only (the rest entered again)",
                "visit \"late-call\" is known by what its papers say only (the rest entered again)");
        assertThat(restored.json().path("papers").asInt()).isEqualTo(4);
        assertThat(shop.json("audit").path("series")).isEqualTo(before);
        assertThat(shop.json("audit").path("findings")).isEmpty();
        assertThat(papers.stream().map(FromPapersAttackTest::read).toList()).usingRecursiveComparison()
                .isEqualTo(bytes);
        assertThat(shop.json("audit", "trail", "INV-2026-00001").path("trail").get(0).path("event").asString())
                .isEqualTo("taken-from-paper");
        assertThat(shop.json("show", "INV-2026-00002").path("paper").path("issued").path("replaces").asString())
                .isEqualTo("INV-2026-00001");
        assertThat(shop.json("find", "PO-9").path("papers")).hasSize(1);
        DemoShop.imported(shop.folder());
        shop.json("rates", "adopt", "--yes");
        assertThat(shop.issue("ten-minute-brushing", "2026-05-21").path("number").asString())
                .isEqualTo("INV-2026-00003");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** Stopped between the row and the move, and then the database is lost: whether it was stored, nothing tells any more. */
    @ParameterizedTest
    @EnumSource(Database.class)
    void paperThatWaitedToBeMoved_isTaken(Database database) throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), database);
        shop.issue("late-call", "2026-05-14");
        JsonNode before = shop.json("audit").path("series");
        Path paper = pdfs(shop).getFirst();
        byte[] issued = read(paper);
        Path year = Objects.requireNonNull(paper.getParent());
        Path issuedFolder = Objects.requireNonNull(year.getParent());
        Files.move(paper, issuedFolder.resolve(".unfinished/INV-2026-00001~" + sha256(issued) + ".pdf"));
        Path half = Files.writeString(
                issuedFolder.resolve(".unfinished/INV-2026-00002~" + sha256(issued) + ".pdf"), "%PDF-1.7 and no");
        Files.delete(year);
        Files.delete(issuedFolder.resolve(".seals/INV-2026.txt"));
        lose(shop, database);

        assertThat(findings(shop.run("restore", "--from-papers", "--json"))).contains(
                "INV-2026-00001 waited to be moved to its place, and counts as issued (a credit note if nobody got it)")
                .noneMatch(finding -> finding.contains("INV-2026-00002"));

        assertThat(read(paper)).isEqualTo(issued);
        assertThat(shop.json("audit").path("series")).isEqualTo(before);
        assertThat(shop.json("audit").path("findings")).isEmpty();
        assertThat(half).doesNotExist();
        DemoShop.imported(shop.folder());
        shop.json("rates", "adopt", "--yes");
        assertThat(shop.issue("ten-minute-brushing", "2026-05-21").path("number").asString())
                .isEqualTo("INV-2026-00002");
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException none) {
            throw new IllegalStateException(none);
        }
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void paperThatCannotBeRead_isListedAndItsNumberStaysTaken(Database database) throws IOException {
        BookShop shop = BookShop.in(other.resolve("shop"), database);
        shop.issue("late-call", "2026-05-14");
        shop.issue("ten-minute-brushing", "2026-05-14");
        Files.writeString(pdfs(shop).getLast(), "%PDF-1.7 and nothing more");
        lose(shop, database);

        assertThat(findings(shop.run("restore", "--from-papers", "--json")))
                .anySatisfy(finding -> assertThat(finding).contains("INV-2026-00002.pdf: the PDF cannot be read"))
                .anySatisfy(finding -> assertThat(finding).contains("INV-2026-00002 is missing"));
        DemoShop.imported(shop.folder());
        shop.json("rates", "adopt", "--yes");
        assertThat(shop.issue("goodwill-clinic", "2026-05-14").path("number").asString())
                .isEqualTo("INV-2026-00003");
        assertThat(pdfs(shop).get(1)).hasContent("%PDF-1.7 and nothing more");
    }

    private void lose(BookShop shop, Database database) throws IOException {
        if (database.place(other) instanceof BookPlace.OnServer(String url, Path papers)) {
            Path file = shop.folder().resolve("shop.yaml");
            Files.writeString(file, Files.readString(file).replaceFirst("database: .*", "database: " + url));
        } else {
            try (Stream<Path> files = Files.list(shop.folder().resolve("book"))) {
                for (Path file : files.toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private static List<String> findings(Run run) {
        assertThat(run.status()).as(run.out() + run.err()).isEqualTo(3);
        return run.json().path("findings").valueStream().map(BookShop::finding).toList();
    }

    private static List<Path> pdfs(BookShop shop) throws IOException {
        try (Stream<Path> files = Files.walk(shop.folder().resolve("papers/issued"))) {
            return files.filter(file -> file.toString().endsWith(".pdf")).sorted().toList();
        }
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }
}
