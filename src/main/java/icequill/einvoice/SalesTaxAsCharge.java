package icequill.einvoice;

import icequill.document.InvoiceLine;
import icequill.document.PricedPaper;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.tax.TaxTotal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;

/**
 * Sales tax where only VAT is known: nothing is subject to VAT, which is true, and the tax is a charge that says its name, which
 * is honest. To call it VAT would be neither.
 */
record SalesTaxAsCharge(PricedPaper bill, Function<Phrase, String> wording) implements TaxScheme {

    @Override
    public List<Category> categories(InvoiceLine line) {
        return List.of(Category.OUTSIDE_SCOPE);
    }

    @Override
    public Optional<Category> discounted(InvoiceLine line) {
        return Optional.of(Category.OUTSIDE_SCOPE);
    }

    @Override
    public List<Adjustment> charges() {
        return bill.totals().taxes().stream().filter(total -> !total.tax().isZero()).map(this::charge).toList();
    }

    @Override
    public List<TaxShare> shares() {
        MonetaryAmount all = bill.totals().gross();
        return List.of(new TaxShare(Category.OUTSIDE_SCOPE, all, Amounts.zero(all.getCurrency()), Optional.empty(),
                Optional.of(Codes.OUTSIDE_SCOPE)));
    }

    @Override
    public boolean followsEn16931() {
        return true;
    }

    @Override
    public boolean namesVat() {
        return false;
    }

    private Adjustment charge(TaxTotal total) {
        String name = total.rate().components().stream()
                .map(part -> Phrase.of("total.tax", part.name().named(),
                        new Fact.Part(part.percent())))
                .map(wording).collect(Collectors.joining("; "));
        return Adjustment.charge(total.tax(), Codes.MUTUALLY_DEFINED, name,
                Optional.of(new Adjustment.Base(total.base(), total.rate().total()))
                        .filter(base -> !total.rate().isPartial()),
                Category.OUTSIDE_SCOPE);
    }
}
