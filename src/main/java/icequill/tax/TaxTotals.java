package icequill.tax;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.party.TaxBasis;
import icequill.tax.TaxTotal.ComponentTax;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Adds up tax by rate. */
public final class TaxTotals {

    private TaxTotals() {
    }

    /**
     * One total per rate, in the order in which the rates first occur. Tax is rounded half up once per rate on the summed
     * base ({@link TaxBasis#INVOICE}, the only method of EN 16931) or once per amount ({@link TaxBasis#ITEM}); both are
     * allowed for US sales tax (Streamlined Sales and Use Tax Agreement, section 324).
     */
    public static List<TaxTotal> of(List<Taxable> amounts, TaxBasis basis, CurrencyUnit currency) {
        Map<TaxRate, List<MonetaryAmount>> byRate = new LinkedHashMap<>();
        amounts.forEach(amount -> byRate.computeIfAbsent(amount.rate(), rate -> new ArrayList<>()).add(amount.base()));
        return byRate.entrySet().stream().map(entry -> total(entry.getKey(), entry.getValue(), basis, currency))
                .toList();
    }

    private static TaxTotal total(TaxRate rate, List<MonetaryAmount> bases, TaxBasis basis, CurrencyUnit currency) {
        return total(rate, Amounts.sum(bases, currency), explained(rate, bases, basis));
    }

    /** The tax on amounts at one rate; at least one, all of one currency. */
    static Explanation explained(TaxRate rate, List<MonetaryAmount> bases, TaxBasis basis) {
        return switch (basis) {
        case INVOICE -> Explanation.of(tax(rate, bases.stream().reduce(MonetaryAmount::add).orElseThrow()),
                Phrase.of("reason.tax-basis.invoice"));
        case ITEM -> Explanation.of(bases.stream().map(one -> tax(rate, one)).reduce(Figure::plus).orElseThrow(),
                Phrase.of("reason.tax-basis.item"));
        };
    }

    /** The total of a tax that was figured already, with its components. */
    static TaxTotal total(TaxRate rate, MonetaryAmount base, Explanation how) {
        MonetaryAmount tax = how.amount(base.getCurrency());
        return new TaxTotal(rate, base, tax, how, components(rate, tax));
    }

    private static Figure tax(TaxRate rate, MonetaryAmount base) {
        return Figure.percent(rate.total()).times(Figure.price(base, "")).rounded(Rounding.TAX, base.getCurrency());
    }

    /** The tax divided by the components' rates, largest remainder, so that they add up to it. */
    private static List<ComponentTax> components(TaxRate rate, MonetaryAmount tax) {
        CurrencyUnit currency = tax.getCurrency();
        if (rate.total().isZero()) {
            return rate.components().stream().map(component -> new ComponentTax(component, tax,
                    Explanation.of(Figure.price(tax, ""), Phrase.of("reason.tax-components")))).toList();
        }
        List<BigDecimal> weights = rate.components().stream().map(TaxRate.Component::percent).map(Percent::value)
                .toList();
        BigDecimal amount = new BigDecimal(Amounts.plain(tax));
        return IntStream.range(0, weights.size()).mapToObj(i -> {
            Explanation how = Explanation.of(new Figure.Share(amount, weights, i, Rounding.TAX.decimals(currency)),
                    Phrase.of("reason.tax-components", new Fact.Part(rate.total())));
            return new ComponentTax(rate.components().get(i), how.amount(currency), how);
        }).toList();
    }
}
