package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import icequill.cli.CommandsTest.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;

/** A demo is run again where there is more than the demo. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class DemoAttackTest {

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
    void demo_withAChangedVisit_refusesAndTouchesNothing() throws IOException {
        Path visit = demo.resolve("visits/late-call.yaml");
        String before = Files.readString(visit);
        Files.writeString(visit, before + "# tried out\n");

        assertRefused("visits/late-call.yaml");

        assertThat(visit).content().endsWith("# tried out\n");
        Files.writeString(visit, before);
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
        Path visit = Files.writeString(Files.createDirectory(mine.resolve("visits")).resolve("late-call.yaml"), "mine");

        Run run = Run.of("demo", mine.toString());

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).contains("visits/late-call.yaml");
        assertThat(visit).hasContent("mine");
    }

    @Test
    void demo_whereNoDemoWas_refuses() throws IOException {
        Path mine = other.resolve("mine");
        Files.createDirectories(mine.resolve("visits"));

        assertThat(Run.of("demo", mine.toString()).status()).isEqualTo(3);
    }

    /** Looking at the demo is not changing it. */
    @Test
    @Order(Integer.MAX_VALUE)
    void demo_thatWasOnlyLookedAt_isReplaced() {
        assertThat(Run.of("audit", "--shop", demo.toString()).status()).isZero();
        assertThat(Run.of("find", "pennon", "--shop", demo.toString()).status()).isZero();

        Run again = Run.of("demo", demo.toString());
        assertThat(again.status()).isZero();
        assertThat(again.err()).contains("Made the invented shop");
        assertThat(again.out()).contains("INV-2026-00010", "163.31");
        assertThat(Run.of("audit", "--shop", demo.toString()).status()).isZero();
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
