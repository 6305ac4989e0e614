package icequill.render.view;

import icequill.document.Totals;
import icequill.explain.Explanation;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import icequill.tax.TaxPlace;
import icequill.tax.TaxTotal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * The sums of a paper. Parts of a tax stand in an inner column, so that the outer column adds up from top to bottom.
 *
 * @param label of the last sum
 */
record TotalsView(Totals totals, String label, Sentences sentences) {

    /** What a row is to its neighbors. */
    private enum Rank {
        PART, SUM, LAST
    }

    /**
     * A row of the sums.
     *
     * @param how may be empty
     * @param inner whether its amount stands in the inner column
     */
    record Row(String label, String how, String amount, boolean inner, boolean last) implements Texts {}

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        totals.discount().ifPresent(off -> {
            rows.add(row(sentences.word("total.lines"), "", sentences.formats().amount(totals.lines()), Rank.SUM));
            rows.add(row(sentences.say(off.text()), how(off.how()),
                    sentences.formats().amount(off.amount().negate()), Rank.SUM));
        });
        rows.add(row(sentences.word("total.net"), "", sentences.formats().amount(totals.net()), Rank.SUM));
        totals.taxes().forEach(tax -> rows.addAll(taxes(tax)));
        if (totals.taxes().isEmpty()) {
            rows.add(row(sentences.word("total.no-tax"), "", sentences.formats().amount(totals.tax()), Rank.SUM));
        }
        rows.add(row(label + " (" + totals.gross().getCurrency().getCurrencyCode() + ")", "",
                sentences.formats().amount(totals.gross()), Rank.LAST));
        return List.copyOf(rows);
    }

    private List<Row> taxes(TaxTotal tax) {
        String base = sentences.word("total.on", sentences.formats().amount(tax.base()));
        String amount = sentences.formats().amount(tax.tax());
        List<TaxTotal.ComponentTax> parts = tax.components();
        if (parts.isEmpty()) {
            return List.of(row(sentences.say(tax.rate().untaxed()), base, amount, Rank.SUM));
        }
        if (parts.size() == 1) {
            return List.of(row(name(parts.getFirst()), parts.getFirst().base().map(this::capped).orElse(base), amount,
                    Rank.SUM));
        }
        return Stream.concat(
                parts.stream().map(part -> row(name(part),
                        part.base().map(this::capped).orElseGet(
                                () -> sentences.word("total.on-part", sentences.formats().amount(tax.base()))),
                        sentences.formats().amount(part.amount()), Rank.PART)),
                Stream.of(row(sentences.word("total.tax-sum"), how(tax.how()), amount, Rank.SUM))).toList();
    }

    /** The sums of what is taxed of each line. */
    private String capped(MonetaryAmount base) {
        return sentences.word("total.on-capped", sentences.formats().amount(base));
    }

    private String name(TaxTotal.ComponentTax part) {
        boolean vat = totals.taxPlace().regime() == TaxPlace.Regime.VAT;
        return sentences.word(vat ? "total.vat" : "total.tax", sentences.in(part.component().name()),
                sentences.formats().percent(part.component().percent().value()));
    }

    private String how(Explanation how) {
        return Stream.concat(Stream.of(sentences.formula(how.figure())), how.reasons().stream().map(sentences::say))
                .collect(Collectors.joining("; "));
    }

    private static Row row(String label, String how, String amount, Rank rank) {
        return new Row(Sentences.capitalized(label), how, amount, rank == Rank.PART, rank == Rank.LAST);
    }
}
