package icequill.einvoice;

import icequill.document.InvoiceLine;
import icequill.document.PricedPaper;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.tax.TaxRate;
import icequill.tax.TaxTotal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * VAT by the categories of EN 16931. A line without a rate is exempt (E) for the reason that the paper gives. So is one outside
 * the scope of VAT when anything else is billed with it: category O may not stand beside others (BR-O-11 to BR-O-14), the
 * amounts are the same, and the reason says what it is.
 */
record ValueAddedTax(PricedPaper bill, List<InvoiceLine> lines, Function<Phrase, String> wording) implements TaxScheme {

    ValueAddedTax {
        lines = List.copyOf(lines);
    }

    @Override
    public List<Category> categories(InvoiceLine line) {
        return List.of(category(line));
    }

    @Override
    public Optional<Category> discounted(InvoiceLine line) {
        return Optional.of(category(line));
    }

    @Override
    public List<Adjustment> charges() {
        return List.of();
    }

    @Override
    public List<TaxShare> shares() {
        Map<Category, List<InvoiceLine>> byCategory = lines.stream()
                .collect(Collectors.groupingBy(this::category, LinkedHashMap::new, Collectors.toList()));
        return byCategory.entrySet().stream().map(entry -> share(entry.getKey(), entry.getValue())).toList();
    }

    @Override
    public boolean followsEn16931() {
        return true;
    }

    @Override
    public boolean namesVat() {
        return !nothingInScope();
    }

    private Category category(InvoiceLine line) {
        if (nothingInScope()) {
            return Category.OUTSIDE_SCOPE;
        }
        return line.tax().rate().map(ValueAddedTax::ofRate).orElse(Category.vat("E", Percent.ZERO));
    }

    /** Standard at 0 % is what the list calls zero rated. */
    private static Category ofRate(TaxRate rate) {
        return switch (rate.category()) {
        case S -> Category.vat(rate.total().isZero() ? "Z" : "S", rate.total());
        case Z -> Category.vat("Z", Percent.ZERO);
        case E, O -> Category.vat("E", Percent.ZERO);
        case AE, K, G -> Category.vat(rate.category().name(), Percent.ZERO);
        };
    }

    private boolean nothingInScope() {
        return lines.stream().allMatch(
                line -> line.tax().rate().map(rate -> rate.category() == TaxRate.Category.O).orElse(false));
    }

    private TaxShare share(Category category, List<InvoiceLine> members) {
        CurrencyUnit currency = bill.totals().net().getCurrency();
        MonetaryAmount base = Amounts.sum(members.stream().map(line -> line.tax().base()).toList(), currency);
        MonetaryAmount tax = Amounts.sum(bill.totals().taxes().stream()
                .filter(total -> ofRate(total.rate()).equals(category)).map(TaxTotal::tax).toList(), currency);
        boolean untaxed = !category.code().equals("S") && !category.code().equals("Z");
        return new TaxShare(category, base, tax, untaxed ? Optional.of(reasons(members)) : Optional.empty(),
                Codes.exemption(category.code()));
    }

    private String reasons(List<InvoiceLine> members) {
        return members.stream()
                .map(line -> wording.apply(line.tax().rate().filter(rate -> !rate.category().isTaxed())
                        .map(TaxRate::untaxed).orElse(line.tax().why())))
                .distinct().collect(Collectors.joining("; "));
    }
}
