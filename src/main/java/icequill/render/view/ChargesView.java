package icequill.render.view;

import icequill.document.InvoiceLine;
import icequill.document.PricedPaper;
import icequill.document.Totals;
import icequill.explain.Phrase;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Lines, how each was figured, and what stands below the sums, as texts for {@code parts/charges.ftlh}.
 *
 * @param numbers of those that were done, which credit notes refer to
 * @param remarks printed below the sums
 * @param label of the last sum
 */
record ChargesView(List<InvoiceLine> all, List<Integer> numbers, Totals totals, List<Phrase> remarks, String label,
        Sentences sentences) {

    /** Of an invoice or quote, whose lines are numbered as they are printed. */
    static ChargesView of(PricedPaper paper, List<Phrase> remarks, String label, Sentences sentences) {
        int done = Math.toIntExact(paper.lines().stream().filter(line -> line.outcome().isDone()).count());
        return new ChargesView(paper.lines(), IntStream.rangeClosed(1, done).boxed().toList(), paper.totals(),
                remarks, label, sentences);
    }

    Map<String, Object> model() {
        List<Map<String, Object>> rows = rows();
        int last = Math.max(0, rows.size() - 1);
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("lines", rows.subList(0, last));
        model.put("closing", rows.subList(last, rows.size()));
        model.put("totals", new TotalsView(totals, label, sentences).rows());
        model.put("notes", notes());
        model.put("declined", all.stream().filter(line -> !line.outcome().isDone()).map(this::line).toList());
        return model;
    }

    /** What an agreement includes is one row, where its first line stands. */
    private List<Map<String, Object>> rows() {
        List<InvoiceLine> done = done().toList();
        IncludedLines included = IncludedLines.of(done, numbers);
        List<Map<String, Object>> rows = new ArrayList<>();
        for (int i = 0; i < done.size(); i++) {
            int number = numbers.get(i);
            if (!included.holds(number)) {
                rows.add(numbered(line(done.get(i)), String.valueOf(number)));
            } else if (included.begins(number)) {
                rows.add(numbered(included.row(sentences), included.range()));
            }
        }
        return rows;
    }

    private static Map<String, Object> numbered(Map<String, Object> row, String number) {
        row.put("number", number);
        return row;
    }

    private Stream<InvoiceLine> done() {
        return all.stream().filter(line -> line.outcome().isDone());
    }

    private Map<String, Object> line(InvoiceLine line) {
        return new LineView(line, sentences)
                .row(line.tax().isTaxed() && done().anyMatch(other -> !other.tax().isTaxed()));
    }

    private List<String> notes() {
        return Stream.concat(Stream.of(taxNote()).filter(note -> !note.isEmpty()),
                remarks.stream().map(sentences::say)).toList();
    }

    /** Which lines are taxed, and why the others are not, each reason once. */
    private String taxNote() {
        List<String> reasons = done().filter(line -> !line.tax().isTaxed()).map(line -> line.tax().why())
                .map(sentences::say).distinct()
                .toList();
        if (reasons.isEmpty()) {
            return done().findAny().map(any -> sentences.word("note.all-taxed")).orElse("");
        }
        String key = done().anyMatch(line -> line.tax().isTaxed()) ? "note.some-taxed" : "note.none-taxed";
        return sentences.word(key, String.join("; ", reasons));
    }
}
