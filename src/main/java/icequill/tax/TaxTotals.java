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
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
        Map<TaxRate, List<Taxable>> byRate = new LinkedHashMap<>();
        amounts.forEach(amount -> byRate.computeIfAbsent(amount.rate(), rate -> new ArrayList<>()).add(amount));
        return byRate.entrySet().stream().map(entry -> total(entry.getKey(), entry.getValue(), basis, currency))
                .toList();
    }

    private static TaxTotal total(TaxRate rate, List<Taxable> amounts, TaxBasis basis, CurrencyUnit currency) {
        List<TaxedPart> onTop = parts(amounts.stream().filter(amount -> amount.shown().isEmpty()));
        List<Taxable> within = amounts.stream().filter(amount -> amount.shown().isPresent()).toList();
        Optional<Explanation> taxOnTop = onTop.isEmpty()
                ? Optional.empty()
                : Optional.of(explained(rate, onTop, basis));
        Optional<Explanation> included = within.isEmpty() ? Optional.empty() : Optional.of(included(within, currency));
        Explanation how = Stream.concat(taxOnTop.stream(), included.stream()).reduce(TaxTotals::together).orElseThrow();
        return total(rate, sum(amounts.stream().map(Taxable::base), currency), parts(amounts.stream()), how);
    }

    private static List<TaxedPart> parts(Stream<Taxable> amounts) {
        return amounts.map(amount -> TaxedPart.all(amount.base())).toList();
    }

    private static MonetaryAmount sum(Stream<MonetaryAmount> amounts, CurrencyUnit currency) {
        return Amounts.sum(amounts.toList(), currency);
    }

    /** What was shown, less what it comes to without its tax. */
    private static Explanation included(List<Taxable> within, CurrencyUnit currency) {
        return Explanation.of(
                Figure.price(sum(within.stream().flatMap(amount -> amount.shown().stream()), currency), "")
                        .minus(Figure.price(sum(within.stream().map(Taxable::base), currency), "")),
                Phrase.of("reason.tax-included"));
    }

    private static Explanation together(Explanation one, Explanation other) {
        return new Explanation(one.figure().plus(other.figure()),
                Stream.concat(one.reasons().stream(), other.reasons().stream()).toList());
    }

    /** The tax on parts of lines at one rate; at least one, all of one currency. */
    static Explanation explained(TaxRate rate, List<TaxedPart> parts, TaxBasis basis) {
        return switch (basis) {
        case INVOICE -> Explanation.of(tax(rate, parts), reasons(rate, "reason.tax-basis.invoice"));
        case ITEM -> Explanation.of(
                parts.stream().map(one -> tax(rate, List.of(one))).reduce(Figure::plus).orElseThrow(),
                reasons(rate, "reason.tax-basis.item"));
        };
    }

    private static Phrase[] reasons(TaxRate rate, String basis) {
        Stream<Phrase> share = rate.components().stream().flatMap(component -> component.share().stream()).distinct()
                .map(part -> Phrase.of("reason.tax-share", new Fact.Part(part)));
        return Stream.concat(Stream.concat(Stream.of(Phrase.of(basis)), share),
                rate.components().stream().flatMap(component -> component.cap().map(
                        cap -> Phrase.of("reason.tax-cap", component.name().named(), new Fact.Amount(cap))).stream()))
                .toArray(Phrase[]::new);
    }

    /**
     * The total of a tax that was figured already, with its components.
     *
     * @param parts of the lines, which add up to the base
     */
    static TaxTotal total(TaxRate rate, MonetaryAmount base, List<TaxedPart> parts, Explanation how) {
        MonetaryAmount tax = how.amount(base.getCurrency());
        return new TaxTotal(rate, base, tax, how, components(rate, parts, tax));
    }

    /** By all components together, but by one that may tax a part only by itself. */
    private static Figure tax(TaxRate rate, List<TaxedPart> parts) {
        CurrencyUnit currency = currency(parts);
        Percent whole = rate.components().stream().filter(component -> !component.isPartial())
                .map(TaxRate.Component::percent).reduce(Percent.ZERO, Percent::plus);
        Figure onAll = Figure.percent(whole)
                .times(Figure.price(Amounts.sum(parts.stream().map(TaxedPart::base).toList(), currency), ""));
        List<Figure> capped = rate.components().stream().filter(TaxRate.Component::isPartial)
                .map(component -> Figure.percent(component.percent())
                        .times(Figure.price(taxed(component, parts), "")))
                .toList();
        Figure sum = whole.isZero() && !capped.isEmpty()
                ? capped.stream().reduce(Figure::plus).orElseThrow()
                : capped.stream().reduce(onAll, Figure::plus);
        return sum.rounded(Rounding.TAX, currency);
    }

    private static MonetaryAmount taxed(TaxRate.Component component, List<TaxedPart> parts) {
        return Amounts.sum(parts.stream().map(part -> part.by(component)).toList(), currency(parts));
    }

    /** By what each component comes to; by their rates where one comes to less than nothing. */
    private static List<BigDecimal> weights(TaxRate rate, List<TaxedPart> parts) {
        List<BigDecimal> percents = rate.components().stream().map(component -> component.percent().value()).toList();
        List<BigDecimal> shares = rate.components().stream().map(component -> component.percent().value()
                .multiply(Amounts.number(taxed(component, parts)))).toList();
        boolean isDivided = shares.stream().allMatch(share -> share.signum() >= 0)
                && shares.stream().anyMatch(share -> share.signum() > 0);
        return rate.isPartial() && isDivided ? shares : percents;
    }

    /** The tax divided by the components' rates, largest remainder, so that they add up to it. */
    private static List<ComponentTax> components(TaxRate rate, List<TaxedPart> parts, MonetaryAmount tax) {
        CurrencyUnit currency = tax.getCurrency();
        if (rate.total().isZero()) {
            return rate.components().stream().map(component -> new ComponentTax(component, tax,
                    Explanation.of(Figure.price(tax, ""), Phrase.of("reason.tax-components")), base(component, parts)))
                    .toList();
        }
        List<BigDecimal> weights = weights(rate, parts);
        BigDecimal amount = new BigDecimal(Amounts.plain(tax));
        return IntStream.range(0, weights.size()).mapToObj(i -> {
            Explanation how = Explanation.of(new Figure.Share(amount, weights, i, Rounding.TAX.decimals(currency)),
                    Phrase.of("reason.tax-components", new Fact.Part(rate.total())));
            TaxRate.Component component = rate.components().get(i);
            return new ComponentTax(component, how.amount(currency), how, base(component, parts));
        }).toList();
    }

    private static Optional<MonetaryAmount> base(TaxRate.Component component, List<TaxedPart> parts) {
        return component.isPartial() ? Optional.of(taxed(component, parts)) : Optional.empty();
    }

    private static CurrencyUnit currency(List<TaxedPart> parts) {
        return parts.getFirst().base().getCurrency();
    }
}
