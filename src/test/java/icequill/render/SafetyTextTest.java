package icequill.render;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.document.Paper;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.render.view.CautionWords;
import icequill.render.words.Sentences;
import icequill.work.Caution;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever needs a caution can read it: it is set no smaller than the text of its paper. */
class SafetyTextTest {

    private static final int ELEVEN = 110;

    /** A printed text without its spaces, with the size of each of its letters in tenths of a point. */
    private static final class Sizes extends PDFTextStripper {

        private final StringBuilder text = new StringBuilder();
        private final List<Integer> sizes = new ArrayList<>();

        @Override
        protected void writeString(String string, List<TextPosition> positions) throws IOException {
            for (TextPosition position : positions) {
                String letters = position.getUnicode().replaceAll("[\\s\\u00a0]", "");
                text.append(letters);
                letters.chars().forEach(each -> sizes.add(Math.round(10 * position.getYScale())));
            }
        }

        /** The size in which most of it is set. */
        int usual() {
            Map<Integer, Integer> letters = new TreeMap<>();
            sizes.forEach(size -> letters.merge(size, 1, Integer::sum));
            return letters.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
        }

        /** The smallest letter of a sentence; 0 where it is not printed. */
        int smallest(String sentence) {
            String letters = sentence.replaceAll("[\\s\\u00a0]", "").toLowerCase(Locale.ROOT);
            int at = text.toString().toLowerCase(Locale.ROOT).indexOf(letters);
            return at < 0
                    ? 0
                    : sizes.subList(at, at + letters.length()).stream().mapToInt(Integer::intValue).min().orElseThrow();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void cautions_onPapersThatSayThem_noSmallerThanTheirText(Language language) throws IOException {
        InvoiceFixture fixture = InvoiceFixture.of(language, PaperSize.LETTER, "USD", "US");
        Sentences sentences = Sentences.of(language, "US");
        List<String> cautions = Arrays.stream(Caution.values())
                .map(new CautionWords(sentences)::full).toList();

        assertLarge(fixture.workSheet(), cautions, ELEVEN);
        assertLarge(fixture.visitRecord(),
                List.of(new CautionWords(sentences).full(Caution.GAS_SUSPECTED)), ELEVEN);
        assertLarge(fixture.brushingSheet(), Stream.concat(cautions.stream(), Stream
                .of("who", "do.1", "do.2", "not.1", "not.6", "reason.hard-wired")
                .map(key -> sentences.word("brushing." + key)))
                .toList(), 0);
    }

    /** @param least in tenths of a point; no smaller than most of the paper either */
    private static void assertLarge(Paper paper, List<String> sentences, int least) throws IOException {
        Printer printer = Printer.of(Path.of("none"));
        byte[] pdf = printer.html(paper).then(html -> printer.pdf(paper, html, List.of(), Map.of())).orElseThrow();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Sizes sizes = new Sizes();
            sizes.getText(document);
            assertThat(sentences).allSatisfy(sentence -> assertThat(sizes.smallest(sentence)).as(sentence)
                    .isGreaterThanOrEqualTo(Math.max(least, sizes.usual())));
        }
    }
}
