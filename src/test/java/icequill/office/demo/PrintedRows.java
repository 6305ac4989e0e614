package icequill.office.demo;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A paper as its reader has it: rows of words with their places and sizes, read from the PDF with nothing of the program. */
record PrintedRows(List<Row> rows) {

    private static final Pattern AMOUNT = Pattern.compile("[−-]?\\d{1,3}(,\\d{3})*\\.\\d\\d");

    PrintedRows {
        rows = List.copyOf(rows);
    }

    /**
     * A word.
     *
     * @param end of its last letter, in points from the left
     * @param size of its letters, in points
     */
    record Word(String text, float end, float size) {

        Optional<BigDecimal> amount() {
            return Optional.of(text).filter(found -> AMOUNT.matcher(found).matches())
                    .map(found -> new BigDecimal(found.replace(",", "").replace("−", "-")));
        }
    }

    /** A line of the page. */
    record Row(List<Word> words) {

        Row {
            words = List.copyOf(words);
        }

        String text() {
            return words.stream().map(Word::text).collect(Collectors.joining(" "));
        }

        List<BigDecimal> amounts() {
            return words.stream().flatMap(word -> word.amount().stream()).toList();
        }

        /** The amount at the right margin. */
        Optional<BigDecimal> charged(float margin) {
            return words.isEmpty()
                    ? Optional.empty()
                    : words.getLast().amount().filter(
                            amount -> Math.abs(words.getLast().end() - margin) < 1.5);
        }
    }

    /** All rows of all pages. */
    static PrintedRows of(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            Reader reader = new Reader();
            reader.getText(document);
            return new PrintedRows(reader.rows);
        }
    }

    /** Without the small print that explains figures. */
    PrintedRows large() {
        return new PrintedRows(rows.stream()
                .map(row -> new Row(row.words().stream().filter(word -> word.size() > 9.15).toList()))
                .filter(row -> !row.words().isEmpty()).toList());
    }

    /** The rows after the first that matches, up to and with the next that matches the other; none where there are none. */
    PrintedRows between(String first, String last) {
        int from = find(0, first);
        int until = from < 0 ? -1 : find(from + 1, last);
        return new PrintedRows(until < 0 ? List.of() : rows.subList(from + 1, until + 1));
    }

    /** The rows after the first that matches. */
    PrintedRows from(String first) {
        return new PrintedRows(rows.subList(find(0, first) + 1, rows.size()));
    }

    /** The rows that match, without those before the first and after the last. */
    List<Row> matching(String pattern) {
        return rows.stream().filter(row -> row.text().matches(pattern)).toList();
    }

    /** How far right any amount stands. */
    float margin() {
        return (float) rows.stream().flatMap(row -> row.words().stream()).filter(word -> word.amount().isPresent())
                .mapToDouble(Word::end).max().orElse(0);
    }

    private int find(int from, String pattern) {
        return IntStream.range(from, rows.size()).filter(i -> rows.get(i).text().matches(pattern)).findFirst()
                .orElse(-1);
    }

    /** Collects the rows. */
    private static final class Reader extends PDFTextStripper {

        private final List<Row> rows = new ArrayList<>();
        private final StringBuilder word = new StringBuilder();
        private List<Word> words = new ArrayList<>();
        private float end;
        private float size;

        Reader() {
            setSortByPosition(true);
        }

        @Override
        protected void writeString(String text, List<TextPosition> letters) throws IOException {
            for (TextPosition letter : letters) {
                if (letter.getUnicode().replace('\u00a0', ' ').isBlank()) {
                    endWord();
                    continue;
                }
                if (letter.getYScale() != size) {
                    endWord();
                }
                word.append(letter.getUnicode());
                end = letter.getXDirAdj() + letter.getWidthDirAdj();
                size = letter.getYScale();
            }
            endWord();
            super.writeString(text, letters);
        }

        private void endWord() {
            if (!word.isEmpty()) {
                words.add(new Word(word.toString(), end, size));
                word.setLength(0);
            }
        }

        @Override
        protected void writeLineSeparator() throws IOException {
            rows.add(new Row(words));
            words = new ArrayList<>();
            super.writeLineSeparator();
        }
    }
}
