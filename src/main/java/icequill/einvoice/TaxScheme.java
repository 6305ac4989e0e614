package icequill.einvoice;

import icequill.document.InvoiceLine;
import icequill.document.PricedPaper;
import icequill.explain.Phrase;
import icequill.party.SalesTaxEncoding;
import icequill.tax.TaxPlace;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** How the tax of a bill is written down. */
sealed interface TaxScheme permits ValueAddedTax, SalesTaxAsCharge, PlainSalesTax {

    /**
     * As the regime of the place asks, and for sales tax as the caller wants it.
     *
     * @param lines of the bill, without those that were declined
     */
    static TaxScheme of(PricedPaper bill, List<InvoiceLine> lines, SalesTaxEncoding encoding,
            Function<Phrase, String> wording) {
        if (bill.totals().taxPlace().regime() == TaxPlace.Regime.VAT) {
            return new ValueAddedTax(bill, lines, wording);
        }
        return switch (encoding) {
        case PLAIN -> new PlainSalesTax(bill, lines, wording);
        case EN16931 -> new SalesTaxAsCharge(bill, wording);
        };
    }

    /** What stands on the line. */
    List<Category> categories(InvoiceLine line);

    /** Where the line's share of a discount on the document belongs; empty if discounts are not told apart. */
    Optional<Category> discounted(InvoiceLine line);

    /** Charges on the document, in place of a tax. */
    List<Adjustment> charges();

    /** The tax by its kinds. */
    List<TaxShare> shares();

    /** Whether the document is to follow EN 16931. */
    boolean followsEn16931();

    /** Whether it says anything about VAT; if nothing is subject to it, nobody's VAT identifier may stand there. */
    boolean namesVat();
}
