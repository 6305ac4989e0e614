package icequill.account;

import icequill.account.Invoiced.Early;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.money.Amounts;
import icequill.money.Rounding;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * What was taken off an invoice because enough was paid early. With it the invoice is settled; who pays more than is enough has no
 * more taken off than was open.
 *
 * @param day on which what was paid reached what is enough
 * @param amount with its tax; positive
 * @param tax of the amount; zero where the tax stays
 */
record EarlyDiscount(Invoiced invoice, LocalDate day, MonetaryAmount amount, MonetaryAmount tax) {

    /** Empty where too little was paid by the day that the invoice names, or nothing is left to take off. */
    static Optional<EarlyDiscount> of(Account account, Invoiced invoice) {
        return invoice.early().flatMap(early -> shares(account, invoice).map(Payment.Share::day)
                .filter(day -> !day.isAfter(early.until())).distinct().sorted()
                .flatMap(day -> on(day, early, account, invoice).stream()).findFirst());
    }

    /** What is to be paid of an invoice by the day that it names, for the rest to be taken off, as it stands at the end of a day. */
    static MonetaryAmount enough(Early early, Account account, Invoiced invoice, LocalDate day) {
        MonetaryAmount charged = charged(account, invoice, day);
        return charged.subtract(off(early, charged, invoice)).subtract(paid(account, invoice, day));
    }

    private static Optional<EarlyDiscount> on(LocalDate day, Early early, Account account, Invoiced invoice) {
        MonetaryAmount charged = charged(account, invoice, day);
        MonetaryAmount off = off(early, charged, invoice);
        MonetaryAmount left = charged.subtract(paid(account, invoice, LocalDate.MAX));
        MonetaryAmount taken = left.isGreaterThan(off) ? off : left;
        return enough(early, account, invoice, day).isPositive() || !taken.isPositive()
                ? Optional.empty()
                : Optional.of(new EarlyDiscount(invoice, day, taken,
                        part(early.tax(), taken, early.off(), Rounding.TAX)));
    }

    /** Of what was given back nothing is taken off. */
    private static MonetaryAmount off(Early early, MonetaryAmount charged, Invoiced invoice) {
        return part(early.off(), charged, invoice.total(), Rounding.ALLOWANCE);
    }

    private static MonetaryAmount charged(Account account, Invoiced invoice, LocalDate day) {
        return account.credits().stream().filter(credit -> credit.corrects().equals(Optional.of(invoice.number())))
                .filter(credit -> !credit.date().isAfter(day)).map(Credited::total)
                .reduce(invoice.total(), MonetaryAmount::subtract);
    }

    private static MonetaryAmount paid(Account account, Invoiced invoice, LocalDate day) {
        return Amounts.sum(shares(account, invoice).filter(share -> !share.day().isAfter(day))
                .map(Payment.Share::amount).toList(), account.currency());
    }

    private static Stream<Payment.Share> shares(Account account, Invoiced invoice) {
        return account.payments().stream().flatMap(payment -> payment.shares().stream())
                .filter(share -> share.number().equals(invoice.number()));
    }

    private static MonetaryAmount part(MonetaryAmount of, MonetaryAmount part, MonetaryAmount whole,
            Rounding rounding) {
        return Explanation.of(Figure.price(of, "").times(Figure.price(part, "")).over(Figure.price(whole, ""))
                .rounded(rounding, whole.getCurrency())).amount(whole.getCurrency());
    }
}
