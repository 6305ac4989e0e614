package icequill.render;

import icequill.document.InvoiceLine;
import icequill.document.Totals;
import icequill.explain.Explanation;
import icequill.explain.Phrase;
import icequill.work.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
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
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("text", Sentences.capitalized(sentences.say(line.text())));
        view.put("outcome", line.outcome() == Outcome.CHARGED
                ? ""
                : sentences.word("outcome." + line.outcome().name().toLowerCase(Locale.ROOT)));
        view.put("quantity", line.unitPrice().isPresent() ? sentences.quantity(line.quantity()) : "");
        view.put("price", line.unitPrice()
                .map(price -> sentences.formats().amount(price.amount()) + sentences.each(price.per())).orElse(""));
        view.put("list", sentences.formats().amount(line.list()));
        view.put("amount", sentences.formats().amount(line.net()));
        view.put("how", how(line));
        view.put("marked", line.tax().isTaxed() && done().anyMatch(other -> !other.tax().isTaxed()));
        return view;
    }

    /** Where, by what arithmetic, and why. A bare amount explains nothing, so it is not said twice. */
    private String how(InvoiceLine line) {
        List<String> parts = new ArrayList<>();
        line.machine().ifPresent(parts::add);
        Explanation how = line.how();
        String formula = sentences.formula(how.figure());
        if (!formula.equals(sentences.formats().amount(line.net()))) {
            parts.add(formula);
        }
        how.reasons().forEach(reason -> parts.add(sentences.say(reason)));
        return Sentences.capitalized(String.join("; ", parts));
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
