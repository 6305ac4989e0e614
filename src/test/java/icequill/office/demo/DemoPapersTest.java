package icequill.office.demo;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import icequill.render.VeraPdf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Every paper of the demo, held against the standards. */
@Tag("wide")
class DemoPapersTest {

    private static List<Path> papers = List.of();

    @BeforeAll
    static void findAll() throws IOException {
        papers = FinishedDemo.papers();
    }

    /** Source of the rules: src/test/resources/wcag/SOURCE.md. */
    @Test
    void demo_mostOfEachKind_keepsTheStandards() throws Exception {
        Map<String, List<Path>> kinds = papers.stream().collect(Collectors.groupingBy(DemoPapersTest::kind));

        assertThat(kinds).hasSizeGreaterThan(12);
        for (List<Path> alike : kinds.values()) {
            assertKept(alike.stream().max(Comparator.comparingLong(DemoPapersTest::size)).orElseThrow());
        }
    }

    /** What stands on a page stands on no other, and no page is left empty. */
    @Test
    void demo_everyPage_hasLinesOfItsOwn() throws Exception {
        for (Path paper : papers) {
            List<List<String>> pages = pages(paper);
            for (int page = 0; page < pages.size(); page++) {
                List<String> lines = pages.get(page);
                assertThat(lines).as("page " + (page + 1) + " of " + paper).isNotEmpty();
                if (page > 0) {
                    assertThat(lines.getFirst()).as("page " + (page + 1) + " of " + paper)
                            .isNotEqualTo(pages.get(page - 1).getLast());
                }
            }
        }
    }

    /** Their lines, without the foot. */
    private static List<List<String>> pages(Path paper) throws Exception {
        List<List<String>> pages = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(paper.toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                List<String> lines = stripper.getText(pdf).lines().filter(line -> !line.isBlank()).toList();
                pages.add(lines.subList(0, lines.size() - 1));
            }
        }
        return pages;
    }

    @Tag("long")
    @Test
    void demo_everyPaper_keepsTheStandards() throws Exception {
        assertThat(papers).hasSizeGreaterThan(60);
        for (Path paper : papers) {
            assertKept(paper);
        }
    }

    /** Archivable, accessible, and what of WCAG a machine can judge. */
    private static void assertKept(Path paper) throws Exception {
        byte[] pdf = Files.readAllBytes(paper);
        for (String standard : VeraPdf.STANDARDS) {
            assertThat(VeraPdf.brokenRules(pdf, standard)).as(standard + " " + paper).isEmpty();
        }
        assertThat(VeraPdf.brokenByMachine(pdf)).as(paper.toString()).isEmpty();
    }

    /** What its name begins with. */
    private static String kind(Path paper) {
        return String.valueOf(paper.getFileName()).replaceAll("-.*", "");
    }

    private static long size(Path paper) {
        return paper.toFile().length();
    }
}
