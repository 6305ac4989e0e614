package icequill.office;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.render.Judge;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every paper of the demo, held against the standards. */
class DemoPapersTest {

    @Test
    void demo_everyPaper_isArchivableAndAccessible(@TempDir Path temporary) throws Exception {
        Demo.Made made = Demo.run(temporary.resolve("demo"), line -> {
        }).orElseThrow();

        List<Path> papers = made.papers().stream().map(paper -> paper.files().getFirst()).toList();
        assertThat(papers).hasSizeGreaterThan(15);
        for (Path paper : papers) {
            for (String standard : Judge.STANDARDS) {
                assertThat(Judge.brokenRules(Files.readAllBytes(paper), standard)).as(standard + " " + paper)
                        .isEmpty();
            }
        }
    }
}
