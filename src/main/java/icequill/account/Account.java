package icequill.account;

import java.util.List;
import javax.money.CurrencyUnit;

/**
 * All that one customer was billed, was credited and paid, as far as it is on record. All amounts are of the currency and
 * whole.
 *
 * @param onAccount payments that are for no invoice yet
 */
public record Account(CurrencyUnit currency, List<Invoiced> invoices, List<Credited> credits,
        List<Payment> onAccount) {

    public Account {
        invoices = List.copyOf(invoices);
        credits = List.copyOf(credits);
        onAccount = List.copyOf(onAccount);
    }
}
