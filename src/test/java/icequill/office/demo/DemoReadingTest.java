package icequill.office.demo;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import icequill.render.PaperPages;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a reader of the demo's papers meets, from the PDFs alone: how many pages, how large, and nothing torn at a line's end. */
@Tag("wide")
class DemoReadingTest {

    private static final float SMALLEST = 8.95f;
    private static final float FOOT = 8;
    private static final float FOOT_HEIGHT = 14 * 72 / 25.4f;
    /** That of work sheets, and of all others; letters may reach a little beyond their own width. */
    private static final float NARROW_MARGIN = 12 * 72 / 25.4f;
    private static final float MARGIN = 18 * 72 / 25.4f;
    /** Wider than the space between two words, narrower than that between two columns. */
    private static final float GAP = 7;
    private static final Pattern TORN = Pattern.compile(
            "(.* )?([A-Z]{1,4}-|\\S*\\d\\S*-|(January|February|March|April|May|June|July|August|September|October|November"
                    + "|December) \\d{1,2},?|\\d{1,2} de( (enero|febrero|marzo|abril|mayo|junio|julio|agosto|septiembre|octubre"
                    + "|noviembre|diciembre)( de)?)?|\\d+ fl|\\d+ oz|[ap]\\.|\\d{3}-)");

    private static List<Path> papers = List.of();

    /** A run of letters on one line of one column. */
    private record Run(String text, float smallest, float left, float right, float bottom, float pageHeight,
            float pageWidth) {

        boolean isFoot() {
            return bottom > pageHeight - FOOT_HEIGHT;
        }
    }

    @BeforeAll
    static void findAll() throws IOException {
        papers = FinishedDemo.papers();
    }

    @Test
    void demo_everyPaper_nothingSmallNothingTornNothingCutOff() throws IOException {
        assertThat(papers).hasSizeGreaterThan(50);
        for (Path paper : papers) {
            for (Run run : runs(paper)) {
                assertThat(run.smallest()).as(run.text() + " in " + paper)
                        .isGreaterThanOrEqualTo(run.isFoot() ? FOOT - 0.05f : SMALLEST);
                assertThat(run.text()).as("end of a line in " + paper).doesNotMatch(TORN);
                assertThat(run.right()).as(run.text() + " in " + paper)
                        .isLessThan(
                                run.pageWidth() - (paper.toString().contains("worksheet-") ? NARROW_MARGIN : MARGIN));
            }
        }
    }

    /** Work at one machine takes two pages, an included visit and a record one. */
    @ParameterizedTest
    @CsvSource({"INV-2026-00014, 1", "INV-.*, 2", "CN-.*, 1", "RQ-.*, 1", "record-.*, 1", "renewal-.*, 1",
            "reminder-.*, 1", "statement-.*, 2", "agreement-A-2026-00[2-6], 2", "agreement-A-2026-007, 3",
            "worksheet-summer-cleaning-bakery, 2",
            "worksheet-limpieza-mercado, 2", "worksheet-survey-bakery, 1", "worksheet-autumn-condensers-hotel, 3",
            "MQ-.*, 4", "brushing-.*, 2", "comparison-.*, 2", "owner-.*, 2"})
    void demo_pages_noMoreThan(String name, int most) throws IOException {
        List<Path> kind = papers.stream()
                .filter(paper -> String.valueOf(paper.getFileName()).matches(name + "\\.pdf")).toList();

        assertThat(kind).isNotEmpty();
        for (Path paper : kind) {
            try (PDDocument pdf = Loader.loadPDF(paper.toFile())) {
                assertThat(pdf.getNumberOfPages()).as(paper.toString()).isLessThanOrEqualTo(most);
            }
        }
    }

    /** No place for a detail, and no key of a sentence, is left on any paper, the owner's among them; a fit ends in lines for a file. */
    @Test
    void demo_everyPaper_saysWholeSentences() throws IOException {
        for (Path paper : FinishedDemo.papers()) {
            assertThat(PaperPages.flowing(paper).replaceAll("For pricing/forecast.yaml .*", "")).as(paper.toString())
                    .doesNotContain("{", "}")
                    .doesNotMatch("(?s).*\\b(owner|reason|plan|unit|each|outcome|total|brushing)\\.[a-z].*");
        }
    }

    private static List<Run> runs(Path paper) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(paper.toFile())) {
            Runs runs = new Runs();
            runs.getText(pdf);
            return runs.all;
        }
    }

    private static final class Runs extends PDFTextStripper {

        private final List<Run> all = new ArrayList<>();

        Runs() {
            setSortByPosition(true);
        }

        @Override
        protected void writeString(String text, List<TextPosition> letters) {
            int start = 0;
            for (int i = 1; i <= letters.size(); i++) {
                if (i == letters.size() || letters.get(i).getXDirAdj() - end(letters.get(i - 1)) > GAP) {
                    add(letters.subList(start, i));
                    start = i;
                }
            }
        }

        private static float end(TextPosition letter) {
            return letter.getXDirAdj() + letter.getWidthDirAdj();
        }

        private void add(List<TextPosition> letters) {
            StringBuilder text = new StringBuilder();
            float smallest = Float.MAX_VALUE;
            for (TextPosition letter : letters) {
                text.append(letter.getUnicode().replace('\u00a0', ' '));
                smallest = Math.min(smallest, letter.getYScale());
            }
            TextPosition last = letters.getLast();
            all.add(new Run(text.toString().strip(), smallest, letters.getFirst().getXDirAdj(), end(last),
                    last.getYDirAdj(), last.getPageHeight(), last.getPageWidth()));
        }
    }
}
