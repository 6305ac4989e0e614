package icequill.einvoice;

import icequill.document.Totals;
import icequill.money.Amounts;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * The last look before XML is made: every line works out, and the sums are the paper's, to the cent. The official rules check no
 * line and let a tax differ by almost one unit of the currency, so they would not notice. A difference is a bug.
 */
record TotalsCheck(InvoiceContent content, Totals paper, CurrencyUnit currency) {

    /**
     * The content itself.
     *
     * @throws IllegalStateException when it says another amount than the paper
     */
    static InvoiceContent checked(InvoiceContent content) {
        Totals paper = content.bill().totals();
        new TotalsCheck(content, paper, paper.net().getCurrency()).check();
        return content;
    }

    private void check() {
        content.lines().forEach(this::check);
        Sums sums = content.sums();
        same("the lines", sums.lines(), paper.lines());
        same("the discount", sums.allowances(),
                paper.discount().map(Totals.Discount::amount).orElse(Amounts.zero(currency)));
        same("the net", sums.net().subtract(sums.charges()), paper.net());
        same("the tax", sums.tax().add(sums.charges()), paper.tax());
        same("the total", sums.gross(), paper.gross());
        if (content.followsEn16931()) {
            same("the bases", total(content.taxes().stream().map(TaxShare::base).toList()), sums.net());
        }
    }

    private void check(Line line) {
        Optional<MonetaryAmount> allowance = line.allowance().map(Adjustment::amount);
        MonetaryAmount worked = line.quantity().amount().subtract(allowance.orElse(Amounts.zero(currency)));
        same("line " + line.number(), worked, line.net());
    }

    private MonetaryAmount total(List<MonetaryAmount> amounts) {
        return Amounts.sum(amounts, currency);
    }

    private static void same(String what, MonetaryAmount written, MonetaryAmount onPaper) {
        if (!written.isEqualTo(onPaper)) {
            throw new IllegalStateException(what + ": " + Amounts.plain(written) + " would be written, but "
                    + Amounts.plain(onPaper) + " is on the paper");
        }
    }
}
