package icequill.answer.amounts;

import icequill.document.PricedPaper;
import icequill.document.RepairQuote;
import icequill.explain.ConstantKey;
import icequill.party.Language;
import icequill.render.words.Sentences;
import icequill.tax.Stage;
import icequill.tax.TaxTotal;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.money.MonetaryAmount;

/**
 * Of a paper with lines and taxes.
 *
 * @param discount on the whole paper, with the sign by which it counts
 * @param deposit that a quote asks for before the work, and {@code rest} what is due after it
 * @param stages in which a quote is paid; empty where it is paid at once
 */
public record PricedAmounts(List<LineAmounts> lines, Optional<MonetaryAmount> discount, MonetaryAmount net,
        List<Tax> taxes, MonetaryAmount tax, MonetaryAmount gross, Optional<MonetaryAmount> deposit,
        Optional<MonetaryAmount> rest, List<StageAmounts> stages) implements PaperAmounts {

    /**
     * A part in which a quote is paid.
     *
     * @param kind {@code deposit}, {@code final}, {@code progress} or {@code release}
     * @param share of the whole, in percent
     * @param held back of the net; negative where it is released
     * @param due net and tax less what is held back
     */
    public record StageAmounts(String kind, BigDecimal share, MonetaryAmount net, MonetaryAmount tax,
            MonetaryAmount held, MonetaryAmount due) {

        static StageAmounts of(Stage stage) {
            return new StageAmounts(ConstantKey.of(stage.kind()), stage.share().value(), stage.net(), stage.tax(),
                    stage.held(), stage.due());
        }
    }

    /**
     * One rate of tax.
     *
     * @param category a code of UN/CEFACT list 5305, such as S
     * @param parts by authority
     */
    public record Tax(String category, BigDecimal percent, MonetaryAmount base, MonetaryAmount amount,
            List<Part> parts) {

        public Tax {
            parts = List.copyOf(parts);
        }
    }

    /** What one authority gets. */
    public record Part(String name, BigDecimal percent, MonetaryAmount amount) {}

    public PricedAmounts {
        lines = List.copyOf(lines);
        taxes = List.copyOf(taxes);
        stages = List.copyOf(stages);
    }

    static PricedAmounts of(PricedPaper paper, UnaryOperator<MonetaryAmount> sign, Sentences sentences) {
        return new PricedAmounts(
                paper.lines().stream().map(line -> LineAmounts.of(line, sign, sentences)).toList(),
                paper.totals().discount().map(off -> sign.apply(off.amount().negate())),
                sign.apply(paper.totals().net()),
                paper.totals().taxes().stream().map(total -> tax(total, sign, paper.language())).toList(),
                sign.apply(paper.totals().tax()), sign.apply(paper.totals().gross()), Optional.empty(),
                Optional.empty(), List.of());
    }

    PricedAmounts paidAs(RepairQuote quote) {
        return new PricedAmounts(lines, discount, net, taxes, tax, gross,
                quote.deposit().map(RepairQuote.Deposit::amount), quote.deposit().map(RepairQuote.Deposit::rest),
                quote.parts().map(RepairQuote.InParts::stages).orElse(List.of()).stream().map(StageAmounts::of)
                        .toList());
    }

    private static Tax tax(TaxTotal total, UnaryOperator<MonetaryAmount> sign, Language language) {
        return new Tax(total.rate().category().name(), total.rate().total().value(), sign.apply(total.base()),
                sign.apply(total.tax()),
                total.components().stream().map(part -> new Part(part.component().name().in(language),
                        part.component().percent().value(), sign.apply(part.amount()))).toList());
    }
}
