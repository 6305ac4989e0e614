package icequill.answer;

import icequill.document.InstallmentInvoice;
import icequill.money.Amounts;
import icequill.plans.AgreementState;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.money.MonetaryAmount;

/**
 * What the changes of an agreement give back of a payment that was invoiced; amounts before tax, not negative.
 *
 * @param invoice its number
 * @param payment from 1
 * @param byChanges all of it
 * @param before what credit notes of the invoice gave back already, for whatever reason
 */
public record ChangeCredit(String invoice, String agreement, int payment, MonetaryAmount byChanges,
        MonetaryAmount before) {

    public static ChangeCredit of(String number, InstallmentInvoice invoice, AgreementState hand,
            MonetaryAmount before) {
        MonetaryAmount none = Amounts.zero(before.getCurrency());
        return new ChangeCredit(number, invoice.agreement(), invoice.payment(),
                hand.payments().stream().filter(payment -> payment.number() == invoice.payment())
                        .map(hand.changed()::givenBack).reduce(none, MonetaryAmount::add),
                before);
    }

    /** What is still to be given back. */
    public MonetaryAmount amount() {
        MonetaryAmount rest = byChanges.subtract(before);
        return rest.isNegative() ? Amounts.zero(rest.getCurrency()) : rest;
    }

    /** The payment and how the amount comes about. */
    public String text() {
        return "The changes of " + agreement + " give back " + Amounts.plain(byChanges) + " of payment " + payment
                + " ("
                + invoice + "), before tax; " + Amounts.plain(before) + " of it was given back already, "
                + Amounts.plain(amount()) + " is left.";
    }

    public Map<String, Object> json() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("invoice", invoice);
        view.put("agreement", agreement);
        view.put("payment", payment);
        view.put("currency", byChanges.getCurrency().getCurrencyCode());
        view.put("givenBackByChanges", Amounts.plain(byChanges));
        view.put("givenBackBefore", Amounts.plain(before));
        view.put("amount", Amounts.plain(amount()));
        return view;
    }
}
