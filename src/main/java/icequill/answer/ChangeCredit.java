package icequill.answer;

import icequill.document.InstallmentInvoice;
import icequill.money.Amounts;
import icequill.plans.WholeAgreement;
import javax.money.MonetaryAmount;

/**
 * What the changes of an agreement give back of a payment that was invoiced; amounts before tax, not negative.
 *
 * @param invoice its number
 * @param payment from 1
 * @param givenBackByChanges all of it
 * @param givenBackBefore what credit notes of the invoice gave back already, for whatever reason
 * @param amount what is still to be given back
 */
public record ChangeCredit(String invoice, String agreement, int payment, MonetaryAmount givenBackByChanges,
        MonetaryAmount givenBackBefore, MonetaryAmount amount) {

    public static ChangeCredit of(String number, InstallmentInvoice invoice, WholeAgreement hand,
            MonetaryAmount before) {
        MonetaryAmount none = Amounts.zero(before.getCurrency());
        MonetaryAmount byChanges = hand.givenBack(invoice.payment());
        return new ChangeCredit(number, invoice.agreement(), invoice.payment(),
                byChanges, before, Amounts.larger(none, byChanges.subtract(before)));
    }

    /** The payment and how the amount comes about. */
    public String text() {
        return "The changes of " + agreement + " give back " + Amounts.plain(givenBackByChanges) + " of installment "
                + payment
                + " ("
                + invoice + "), before tax; " + Amounts.plain(givenBackBefore) + " of it was given back already, "
                + Amounts.plain(amount) + " is left.";
    }
}
