package icequill.render.view;

import icequill.document.InvoiceLine;
import icequill.document.Totals;
import icequill.explain.Phrase;
import icequill.render.words.Sentences;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Lines, how each was figured, and what stands below the sums, as texts for {@code parts/charges.ftlh}.
 *
 * @param remarks printed below the sums
 * @param label of the last sum
 */
record ChargesView(List<InvoiceLine> all, Totals totals, List<Phrase> remarks, String label, Sentences sentences) {

    Map<String, Object> model() {
        List<Map<String, Object>> lines = done().map(this::line).toList();
        int last = Math.max(0, lines.size() - 1);
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("lines", lines.subList(0, last));
        model.put("closing", lines.subList(last, lines.size()));
        model.put("totals", new TotalsView(totals, label, sentences).rows());
        model.put("notes", notes());
        model.put("declined", all.stream().filter(line -> !line.outcome().isDone()).map(this::line).toList());
        return model;
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
