package icequill.account;

import icequill.money.Amounts;
import icequill.problem.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * Money that came in.
 *
 * @param amount positive
 * @param reference the payer's, such as the number of a check
 * @param shares what of it is for which invoice, at most the amount together; the rest is on account
 */
public record Payment(LocalDate date, MonetaryAmount amount, Optional<String> reference, List<Share> shares,
        Place place) {

    /**
     * What of a payment is for one bill.
     *
     * @param number of the bill
     * @param day from which it counts; not before the payment
     * @param amount positive
     */
    public record Share(String number, LocalDate day, MonetaryAmount amount) {}

    public Payment {
        shares = List.copyOf(shares);
    }

    /** What is for no invoice by the end of a day. */
    MonetaryAmount onAccount(LocalDate day) {
        return amount.subtract(Amounts.sum(counting(day).map(Share::amount).toList(), amount.getCurrency()));
    }

    /** The shares that count by the end of a day. */
    Stream<Share> counting(LocalDate day) {
        return shares.stream().filter(share -> !share.day().isAfter(day));
    }
}
