package icequill.account;

import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * An invoice that is not wholly settled on a day.
 *
 * @param store the customer's own number of the site that it is for
 * @param credited what credit notes took off it
 * @param open the total less what was paid and credited; positive
 * @param offer what is enough if it is paid early; empty where only all that is open is
 * @param daysLate from the day it was due; zero or negative while it is not past due
 */
public record Owed(String number, LocalDate date, LocalDate due, Optional<String> purchaseOrder, Optional<String> store,
        MonetaryAmount total,
        MonetaryAmount paid, MonetaryAmount credited, MonetaryAmount open, long daysLate,
        Optional<Disputed> disputed, Optional<Offer> offer) {

    /**
     * What is enough if it is paid early.
     *
     * @param until the last day on which it is
     * @param sum positive, and not above what is open
     */
    public record Offer(LocalDate until, MonetaryAmount sum) {}

    /**
     * What the customer objects to of it.
     *
     * @param amount positive, and not above what is open
     */
    public record Disputed(MonetaryAmount amount, String reason) {}

    public boolean isPastDue() {
        return daysLate > 0;
    }

    /** What is enough on a day: what was offered for paying early, or what is open and not disputed. */
    MonetaryAmount enough(LocalDate paid) {
        return offer.filter(early -> !paid.isAfter(early.until())).map(Offer::sum)
                .filter(sum -> disputed.isEmpty()).orElseGet(this::agreed);
    }

    /** What is open and not disputed. */
    public MonetaryAmount agreed() {
        return disputed.map(part -> open.subtract(part.amount())).orElse(open);
    }
}
