package icequill.account;

import java.util.List;
import javax.money.CurrencyUnit;

/**
 * All that one customer was billed, was credited and paid, as far as it is on record. All amounts are of the currency and
 * whole.
 *
 * @param payments shares of which are for its invoices alone
 */
public record Account(CurrencyUnit currency, List<Invoiced> invoices, List<Credited> credits,
        List<Payment> payments) {

    public Account {
        invoices = List.copyOf(invoices);
        credits = List.copyOf(credits);
        payments = List.copyOf(payments);
    }
}
