package icequill.office.demo;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.render.VeraPdf;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every paper of the demo, held against the standards. */
class DemoPapersTest {

    /**
     * What veraPDF takes for letters repeated to look like a drawing, and is none: a row of a table with a dash in each cell, and the
     * indented lines to paste into a file of settings.
     */
    private static final Map<String, String> NO_DRAWING = Map.of("MQ-", "1.3.1-1", "fit-", "1.3.1-2");

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
            String name = paper.getFileName().toString();
            List<String> allowed = NO_DRAWING.entrySet().stream().filter(entry -> name.startsWith(entry.getKey()))
                    .map(Map.Entry::getValue).toList();
            assertThat(VeraPdf.brokenByMachine(Files.readAllBytes(paper))).as(name).isSubsetOf(allowed);
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
