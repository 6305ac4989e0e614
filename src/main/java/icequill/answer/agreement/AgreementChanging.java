package icequill.answer.agreement;

import icequill.answer.BookedPaper;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What machines, or a whole site, that come into an agreement, or go out of it, in mid-term come to; amounts before tax.
 *
 * @param from the first day of the change
 * @param visits at a site that comes in those of the calendar that are due there, at one that goes out those that are no more
 * @param planned visits that stand in the book at a site that goes out, for days on which it is out, by id; they are to be withdrawn by hand
 * @param yearBefore what a year cost without it
 * @param yearAfter what a year costs with it
 * @param price what it adds to the rest of the term, negative where it falls
 * @param payments those still to be billed, as they are with it
 * @param credits what was issued to give back what those are too few for, or would be
 * @param tried whether nothing was stored
 */
public record AgreementChanging(String agreement, LocalDate from, Moved moved, List<LocalDate> visits,
        List<String> planned, MonetaryAmount yearBefore, MonetaryAmount yearAfter, List<Part> price,
        List<Payment> payments, List<BookedPaper> credits, boolean tried) {

    public AgreementChanging {
        visits = List.copyOf(visits);
        planned = List.copyOf(planned);
        price = List.copyOf(price);
        payments = List.copyOf(payments);
        credits = List.copyOf(credits);
    }

    /**
     * What it adds at a site: at its own, and at others that have another discount by it.
     *
     * @param how it was figured
     * @param why in words, and by which minutes
     */
    public record Part(String site, MonetaryAmount amount, String how, List<String> why) {
        public Part {
            why = List.copyOf(why);
        }
    }

    /**
     * A payment.
     *
     * @param before what it was without the change; missing where there was none
     */
    public record Payment(int number, LocalDate due, Optional<MonetaryAmount> before, MonetaryAmount net) {}
}
