package icequill.office.demo;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.render.VeraPdf;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every paper of the demo, held against the standards. */
class DemoPapersTest {

    @TempDir
    static Path temporary;
    private static List<Path> papers;

    @BeforeAll
    static void printAll() {
        Demo.Made made = Demo.run(temporary.resolve("demo"), line -> {
        }).orElseThrow();
        papers = made.papers().stream().map(paper -> paper.files().getFirst()).toList();
    }

    /** Source of the rules: src/test/resources/wcag/SOURCE.md. */
    @Test
    void demo_everyPaper_keepsWhatOfWcagAMachineCanJudge() throws Exception {
        for (Path paper : papers) {
            assertThat(VeraPdf.brokenByMachine(Files.readAllBytes(paper))).as(paper.getFileName().toString()).isEmpty();
        }
    }

    @Test
    void demo_everyPaper_isArchivableAndAccessible() throws Exception {
        assertThat(papers).hasSizeGreaterThan(15);
        for (Path paper : papers) {
            for (String standard : VeraPdf.STANDARDS) {
                assertThat(VeraPdf.brokenRules(Files.readAllBytes(paper), standard)).as(standard + " " + paper)
                        .isEmpty();
            }
        }
    }
}
