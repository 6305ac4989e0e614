package icequill.papers;

import icequill.document.InvoiceLine;
import icequill.document.Totals;
import icequill.document.Totals.EarlyPayment;
import icequill.document.Totals.EarlyPayment.Effect;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Rounding;
import icequill.money.Shares;
import icequill.party.TaxBasis;
import icequill.rates.EarlyPaymentTerms;
import icequill.rates.EarlyPaymentTerms.On;
import icequill.tax.TaxTotal;
import icequill.tax.TaxTotals;
import icequill.tax.Taxable;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * Figures what is enough for an invoice that is paid early. Where the place's tax is due only on what is paid, a discount on the sum with
 * its tax is the same as one on the sum before it.
 *
 * @param lines that were done
 * @param date of the invoice
 * @param due the last day to pay
 */
record EarlyPaymentAssembly(Totals totals, List<InvoiceLine> lines, TaxBasis shops, LocalDate date,
        LocalDate due) {

    EarlyPaymentAssembly {
        lines = lines.stream().filter(line -> line.outcome().isDone()).toList();
    }

    /** The sums with what is offered; none where nothing is to be paid, all of it is due before, or the terms take nothing off. */
    Totals offered(Optional<EarlyPaymentTerms> terms) {
        return terms.filter(each -> !each.percent().isZero() && totals.net().isPositive())
                .filter(each -> !date.plusDays(each.days()).isAfter(due))
                .map(this::offer).map(totals::offering).orElse(totals);
    }

    private EarlyPayment offer(EarlyPaymentTerms terms) {
        boolean reduces = totals.taxPlace().earlyPaymentReducesTax().orElse(false);
        Effect effect = reduces ? Effect.TAX_TOO : terms.on() == On.NET ? Effect.NET : Effect.GROSS;
        MonetaryAmount base = effect == Effect.GROSS ? totals.gross() : totals.net();
        Explanation how = Explanation.of(
                Figure.percent(terms.percent()).times(Figure.price(base, "")).rounded(Rounding.ALLOWANCE, currency()),
                Phrase.of("reason.early-payment", Fact.number(terms.days(), "")));
        MonetaryAmount off = how.amount(currency());
        MonetaryAmount tax = reduces ? taxWithout(off) : totals.tax();
        Figure net = Figure.price(totals.net(), "").minus(Figure.price(off, ""));
        Explanation gross = Explanation.of(effect == Effect.GROSS
                ? Figure.price(totals.gross(), "").minus(Figure.price(off, ""))
                : net.plus(Figure.price(tax, "")));
        return new EarlyPayment(effect, terms.percent(), date.plusDays(terms.days()), off, how, tax,
                gross.amount(currency()), gross);
    }

    /** On the lines less their shares of what is taken off, by the place's own way of rounding. */
    private MonetaryAmount taxWithout(MonetaryAmount off) {
        List<MonetaryAmount> bases = lines.stream().map(line -> line.tax().base()).toList();
        List<MonetaryAmount> shares = Shares.byLargestRemainder(off, bases.stream()
                .map(base -> Amounts.number(Amounts.larger(base, Amounts.zero(currency())))).toList());
        List<Taxable> left = IntStream.range(0, lines.size()).boxed().flatMap(i -> lines.get(i).tax().rate()
                .map(rate -> new Taxable(rate, bases.get(i).subtract(shares.get(i)))).stream()).toList();
        return Amounts.sum(TaxTotals.of(left, totals.taxPlace().basis(shops), currency()).stream().map(TaxTotal::tax)
                .toList(), currency());
    }

    private CurrencyUnit currency() {
        return totals.gross().getCurrency();
    }
}
