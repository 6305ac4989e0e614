package icequill.account;

import icequill.problem.Problem;
import java.time.LocalDate;
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

    /** What cannot be true of it, such as a payment above its invoice; empty when it can be worked with. */
    public List<Problem> problems() {
        return new AccountRules(this).problems();
    }

    /** How it stands at the end of a day; what is dated later does not count. The account must be without problems. */
    public Standing asOf(LocalDate day) {
        return Standing.of(this, day);
    }
}
