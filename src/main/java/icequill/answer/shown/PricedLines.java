package icequill.answer.shown;

import icequill.answer.LeviedTax;
import icequill.document.CreditNote;
import icequill.document.InvoiceLine;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.explain.ConstantKey;
import icequill.money.Amounts;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;

/**
 * The lines of a paper and its taxes by authority, in the language of the paper. What a credit note gives back is negative.
 *
 * @param net before tax, less any discount on the whole paper
 */
public record PricedLines(List<Line> lines, Optional<MonetaryAmount> discount, MonetaryAmount net, List<Tax> taxes,
        MonetaryAmount gross, Sentences sentences) {

    private static final String NONE = "";

    /**
     * One of them.
     *
     * @param number as the paper, or of a credit note the invoice, counts it: from 1
     * @param formula how its net was figured, or before its share was given back that of the line
     * @param why the reasons for that
     */
    public record Line(int number, String text, String outcome, MonetaryAmount net, String formula, List<String> why) {

        public Line {
            why = List.copyOf(why);
        }
    }

    /**
     * What one authority gets.
     *
     * @param name with its percentage
     */
    public record Tax(String name, MonetaryAmount base, MonetaryAmount amount) {}

    public PricedLines {
        lines = List.copyOf(lines);
        taxes = List.copyOf(taxes);
    }

    /** Empty for a paper without lines of its own. */
    static Optional<PricedLines> of(Paper paper) {
        return paper instanceof PricedPaper priced ? Optional.of(of(priced)) : Optional.empty();
    }

    private static PricedLines of(PricedPaper paper) {
        Sentences sentences = Sentences.of(paper.language(), paper.shop().address().country());
        boolean back = paper instanceof CreditNote;
        return new PricedLines(
                IntStream.range(0, paper.lines().size()).mapToObj(i -> line(paper, i, back, sentences)).toList(),
                paper.totals().discount().map(off -> signed(off.amount().negate(), back)),
                signed(paper.totals().net(), back),
                LeviedTax.of(paper.totals().taxes(), sentences).stream()
                        .map(tax -> new Tax(
                                tax.name() + tax.percent().map(rate -> " " + sentences.formats().percent(rate))
                                        .orElse(NONE),
                                signed(tax.base(), back), signed(tax.amount(), back)))
                        .toList(),
                signed(paper.totals().gross(), back), sentences);
    }

    private static Line line(PricedPaper paper, int i, boolean back, Sentences sentences) {
        InvoiceLine line = paper.lines().get(i);
        return new Line(paper instanceof CreditNote credit ? credit.numbers().get(i) : i + 1,
                sentences.say(line.text()), sentences.word("outcome." + ConstantKey.of(line.outcome())),
                signed(line.net(), back), sentences.formula(line.how().figure()),
                line.how().reasons().stream().map(sentences::say).toList());
    }

    private static MonetaryAmount signed(MonetaryAmount amount, boolean back) {
        return back ? amount.negate() : amount;
    }

    /** The heads of {@link #rows}, the last of which stands above amounts. */
    public List<String> head() {
        return List.of("#", sentences.word("table.line"), sentences.word("table.outcome"),
                sentences.word("table.net"));
    }

    /** The lines, then the sums. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        lines.forEach(line -> rows.add(
                List.of(String.valueOf(line.number()), line.text(), line.outcome(), Amounts.plain(line.net()))));
        discount.ifPresent(off -> rows.add(sum(sentences.word("table.discount"), NONE, off)));
        rows.add(sum(sentences.word("total.net"), NONE, net));
        taxes.forEach(tax -> rows.add(sum(tax.name(), sentences.word("total.on", Amounts.plain(tax.base())),
                tax.amount())));
        rows.add(sum(sentences.word("table.total"), NONE, gross));
        return rows;
    }

    private static List<String> sum(String name, String of, MonetaryAmount amount) {
        return List.of(NONE, Sentences.capitalized(name), of, Amounts.plain(amount));
    }
}
