package icequill.pricer;

import icequill.agreement.Installment;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Makes a payment of an agreement into a priced line, so that it is taxed and billed like any other. */
public final class InstallmentPricing {

    private InstallmentPricing() {
    }

    /**
     * The payment as the one line of a sale of its own. What the work costs the shop belongs to the visits, so its cost is
     * zero.
     *
     * @param text what the customer is told it is
     */
    public static PricedVisit price(Installment payment, Phrase text) {
        CurrencyUnit currency = payment.amount().getCurrency();
        MonetaryAmount zero = Amounts.zero(currency);
        PricedLine line = new PricedLine(ChargeClass.AGREEMENT, Outcome.CHARGED, text, Optional.empty(),
                Quantity.of(1, Unit.EACH), Optional.empty(), payment.amount(), zero, payment.amount(), payment.how(),
                Cost.none(currency, "owner.none"));
        return new PricedVisit(currency, List.of(line), Optional.empty());
    }
}
