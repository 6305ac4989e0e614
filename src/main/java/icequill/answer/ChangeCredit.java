package icequill.answer;

import icequill.document.CreditNote;
import icequill.document.InstallmentInvoice;
import icequill.document.InstallmentInvoice.BilledSites;
import icequill.money.Amounts;
import icequill.plans.WholeAgreement;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What the changes of an agreement give back of a payment that was invoiced; amounts before tax, not negative.
 *
 * @param invoice its number
 * @param payment from 1
 * @param givenBackByChanges all of it
 * @param givenBackBefore what credit notes of the invoice gave back already, for whatever reason
 * @param amount what is still to be given back
 * @param lines the same of each line of the invoice, which is one for each site
 */
public record ChangeCredit(String invoice, String agreement, int payment, MonetaryAmount givenBackByChanges,
        MonetaryAmount givenBackBefore, MonetaryAmount amount, List<OfLine> lines) {

    /**
     * A site's part of it, taxed by the place of the site.
     *
     * @param line of the invoice, from 1
     */
    public record OfLine(int line, MonetaryAmount givenBackByChanges, MonetaryAmount givenBackBefore,
            MonetaryAmount amount) {

        private String text() {
            return "line " + line + ": " + Amounts.plain(givenBackByChanges) + ", " + Amounts.plain(givenBackBefore)
                    + " given back already, " + Amounts.plain(amount) + " left";
        }
    }

    public ChangeCredit {
        lines = List.copyOf(lines);
    }

    /**
     * What changes of an agreement give back of an invoice.
     *
     * @param before the credit notes of the invoice
     * @param now by its id, what a site that was merged into another is now
     */
    public static ChangeCredit of(String number, InstallmentInvoice invoice, WholeAgreement hand,
            List<CreditNote> before, UnaryOperator<String> now) {
        CurrencyUnit currency = invoice.totals().net().getCurrency();
        MonetaryAmount none = Amounts.zero(currency);
        List<OfLine> lines = IntStream.range(0, invoice.lines().size()).mapToObj(i -> {
            MonetaryAmount byChanges = invoice.sites().map(BilledSites::all)
                    .map(sites -> hand.givenBackAt(now.apply(sites.get(i).id()), invoice.payment()))
                    .orElseGet(() -> hand.givenBack(invoice.payment()));
            MonetaryAmount earlier = Amounts.sum(before.stream().map(note -> note.netOf(i + 1)).toList(), currency);
            return new OfLine(i + 1, byChanges, earlier, Amounts.larger(none, byChanges.subtract(earlier)));
        }).toList();
        return new ChangeCredit(number, invoice.agreement(), invoice.payment(),
                Amounts.sum(lines.stream().map(OfLine::givenBackByChanges).toList(), currency),
                Amounts.sum(lines.stream().map(OfLine::givenBackBefore).toList(), currency),
                Amounts.sum(lines.stream().map(OfLine::amount).toList(), currency), lines);
    }

    /** The payment and how the amount comes about. */
    public String text() {
        String payment = "The changes of " + agreement + " give back " + Amounts.plain(givenBackByChanges)
                + " of installment " + this.payment + " (" + invoice + "), before tax; ";
        return lines.size() == 1
                ? payment + Amounts.plain(givenBackBefore) + " of it was given back already, " + Amounts.plain(amount)
                        + " is left."
                : payment + lines.stream().map(OfLine::text).collect(Collectors.joining("; ")) + ".";
    }
}
