package icequill.office.demo;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import icequill.render.VeraPdf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every paper of the demo, held against the standards. */
class DemoPapersTest {

    private static List<Path> papers = List.of();

    @BeforeAll
    static void findAll() throws IOException {
        papers = FinishedDemo.papers();
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
        assertThat(papers).hasSizeGreaterThan(60);
        for (Path paper : papers) {
            for (String standard : VeraPdf.STANDARDS) {
                assertThat(VeraPdf.brokenRules(Files.readAllBytes(paper), standard)).as(standard + " " + paper)
                        .isEmpty();
            }
        }
    }
}
