package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import icequill.OwnProcess;
import icequill.cli.CommandsTest.Run;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;

/** A demo is run again where there is more than the demo. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
@Tag("wide")
class DemoAttackTest {

    private static final String UNFINISHED = ".icequill-demo-unfinished-";

    @TempDir
    static Path common;

    private static Path demo;

    @TempDir
    Path other;

    @BeforeAll
    static void demo() throws IOException {
        demo = FinishedDemo.copy(common.resolve("demo"));
    }

    @Test
    void demo_besideANote_refusesAndTouchesNothing() throws IOException {
        Path note = Files.writeString(demo.resolve("papers/notes of mine.txt"), "precious");

        assertRefused("papers/notes of mine.txt");

        assertThat(note).hasContent("precious");
        Files.delete(note);
    }

    @Test
    void demo_withAChangedPriceList_refusesAndTouchesNothing() throws IOException {
        Path list = demo.resolve("pricing/taxes.yaml");
        String before = Files.readString(list);
        Files.writeString(list, before + "# tried out\n");

        assertRefused("pricing/taxes.yaml");

        assertThat(list).content().endsWith("# tried out\n");
        Files.writeString(list, before);
    }

    @Test
    void demo_withALinkToElsewhere_refusesAndDeletesNothingThere() throws IOException {
        Path precious = Files.writeString(Files.createDirectories(other.resolve("elsewhere")).resolve("a"), "precious");
        Path link = Files.createSymbolicLink(demo.resolve("elsewhere"), precious.getParent());

        assertRefused("elsewhere");

        assertThat(precious).hasContent("precious");
        Files.delete(link);
    }

    @Test
    void demo_withAnEmptyFolderOfMine_refuses() throws IOException {
        Path mine = Files.createDirectory(demo.resolve("mine"));

        assertRefused("mine");

        Files.delete(mine);
    }

    @Test
    void demo_whereOnlyTheMarkIsADemos_refuses() throws IOException {
        Path mine = Files.createDirectories(other.resolve("mine"));
        Files.copy(demo.resolve(".icequill-demo"), mine.resolve(".icequill-demo"));
        Path list = Files.writeString(Files.createDirectory(mine.resolve("pricing")).resolve("taxes.yaml"), "mine");

        Run run = Run.of("demo", mine.toString());

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).contains("pricing/taxes.yaml");
        assertThat(list).hasContent("mine");
    }

    @Test
    void demo_whereNoDemoWas_refuses() throws IOException {
        Path mine = other.resolve("mine");
        Files.createDirectories(mine.resolve("visits"));

        assertThat(Run.of("demo", mine.toString()).status()).isEqualTo(3);
    }

    @Test
    void demo_whereAnotherIsBeingMade_refusesAndTouchesNothing() throws IOException {
        long living = ProcessHandle.current().parent().orElseThrow().pid();
        Path room = Files.createDirectory(demo.resolve(UNFINISHED + living));
        List<Path> before = all();

        Run run = Run.of("demo", demo.toString());

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).contains("process " + living + " is making a demo there");
        assertThat(all()).isEqualTo(before);
        Files.delete(room);
    }

    /** In an empty folder. */
    @Tag("long")
    @Test
    void demo_afterOneThatWasKilledAtWork_isMade() throws Exception {
        Path killed = other.resolve("killed");
        killAtWork(killed);

        assertMade(killed);
    }

    /** As it is at every moment of a demo: something made, nothing in its place yet. */
    private static void killAtWork(Path folder) throws Exception {
        Process child = new ProcessBuilder(
                OwnProcess.java(List.of(), Main.class, List.of("demo", folder.toString())))
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        try (BufferedReader progress = child.errorReader()) {
            while (!progress.readLine().startsWith("Invoice 2 ")) {
                // Something is in the book from then on.
            }
            child.destroyForcibly().waitFor();
        }
        assertThat(folder.resolve(UNFINISHED + child.pid() + "/papers/issued/INV-2026/INV-2026-00001.pdf")).exists();
    }

    /** Looking at it is not changing it, nor is being killed when an earlier one is half away, or a later one half in its place. */
    @Test
    @Order(Integer.MAX_VALUE - 1)
    void demo_lookedAt_andHalfMoved_isReplaced() throws Exception {
        assertReplaced();
    }

    /** Nor is being killed at work on a later one. */
    @Tag("long")
    @Test
    @Order(Integer.MAX_VALUE)
    void demo_lookedAt_killedAtWork_andHalfMoved_isReplaced() throws Exception {
        killAtWork(demo);
        assertReplaced();
    }

    private static void assertReplaced() throws IOException {
        assertThat(Run.of("audit", "--shop", demo.toString()).status()).isZero();
        assertThat(Run.of("find", "pennon", "--shop", demo.toString()).status()).isZero();
        Path unfinished = Files.createDirectory(demo.resolve(UNFINISHED + Long.MAX_VALUE / 100));
        for (String moved : List.of("book", "papers", "shop.yaml", "templates")) {
            Files.move(demo.resolve(moved), unfinished.resolve(moved));
        }

        assertMade(demo);
    }

    /** Whole, and nothing beside it: what is there is what the list says. */
    private static void assertMade(Path folder) throws IOException {
        Run run = Run.of("demo", folder.toString());
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.err()).contains("Made the invented shop in " + folder);
        assertThat(run.out()).contains("INV-2026-00010", "163.31");
        assertThat(Run.of("audit", "--shop", folder.toString()).status()).isZero();
        try (var files = Files.walk(folder)) {
            assertThat(Files.readAllLines(folder.resolve(".icequill-demo")).stream().skip(1)
                    .map(line -> line.substring(line.indexOf("  ") + 2)))
                    .containsExactlyInAnyOrderElementsOf(files.map(file -> folder.relativize(file).toString())
                            .filter(name -> !name.isEmpty() && !name.equals(".icequill-demo")).toList());
        }
    }

    private static void assertRefused(String name) throws IOException {
        List<Path> before = all();
        Run run = Run.of("demo", demo.toString());

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).contains("the folder holds what no demo made, or what was changed since: " + name,
                "a new or empty folder, or one with an earlier demo and nothing else");
        assertThat(all()).isEqualTo(before);
    }

    private static List<Path> all() throws IOException {
        try (var files = Files.walk(demo)) {
            return files.sorted().toList();
        }
    }
}
