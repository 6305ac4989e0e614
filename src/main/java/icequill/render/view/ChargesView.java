package icequill.render.view;

import icequill.document.InvoiceLine;
import icequill.document.PricedPaper;
import icequill.document.Totals;
import icequill.explain.Phrase;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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

    /**
     * Lines and sums.
     *
     * @param closing the last line, which no page break parts from the sums; none where there is no line
     * @param declined what was offered and not done
     */
    record Charged(List<LineView.Row> lines, List<LineView.Row> closing, List<TotalsView.Row> totals,
            List<String> notes, List<LineView.Row> declined)
            implements
            Texts {}

    Charged charged() {
        List<LineView.Row> rows = rows();
        int last = Math.max(0, rows.size() - 1);
        return new Charged(rows.subList(0, last), rows.subList(last, rows.size()),
                new TotalsView(totals, label, sentences).rows(), notes(),
                all.stream().filter(line -> !line.outcome().isDone()).map(this::line).toList());
    }

    /** What an agreement includes is one row, where its first line stands. */
    private List<LineView.Row> rows() {
        List<InvoiceLine> done = done().toList();
        IncludedLines included = IncludedLines.of(done, numbers);
        List<LineView.Row> rows = new ArrayList<>();
        for (int i = 0; i < done.size(); i++) {
            int number = numbers.get(i);
            if (!included.holds(number)) {
                rows.add(line(done.get(i)).numbered(String.valueOf(number)));
            } else if (included.begins(number)) {
                rows.add(included.row(sentences).numbered(included.range()));
            }
        }
        return List.copyOf(rows);
    }

    private Stream<InvoiceLine> done() {
        return all.stream().filter(line -> line.outcome().isDone());
    }

    private LineView.Row line(InvoiceLine line) {
        return new LineView(line, sentences)
                .row(line.tax().isTaxed() && done().anyMatch(other -> !other.tax().isTaxed()));
    }

    private List<String> notes() {
        return Stream.of(early().stream(), Stream.of(taxNote()).filter(note -> !note.isEmpty()),
                remarks.stream().map(sentences::say)).flatMap(Function.identity()).toList();
    }

    /** The terms of paying early, and how both sums were figured. */
    private Optional<String> early() {
        return totals.early().map(early -> sentences.say(early.said()) + " "
                + sentences.word("early.how", sentences.formula(early.how().figure()) + " = "
                        + sentences.formats().amount(early.off()),
                        sentences.formula(early.grossHow().figure()) + " = "
                                + sentences.formats().amount(early.gross())));
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
