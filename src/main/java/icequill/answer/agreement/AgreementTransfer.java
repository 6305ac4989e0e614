package icequill.answer.agreement;

import icequill.answer.BookedPaper;
import icequill.answer.agreement.AgreementEnding.Back;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What it comes to that a new owner takes over the rest of an agreement; amounts before tax.
 *
 * @param next the number of his agreement
 * @param from his first day
 * @param former the owner who sold, by id
 * @param formerName his name
 * @param owner the new one, by id
 * @param ownerName his name
 * @param back what goes back to the former one; missing where nothing was paid ahead
 * @param credits what was issued to give it back, or would be
 * @param unbilled payments that the former one is still to be billed, by number, less what goes back of them
 * @param toBill visits before that day that are done and not billed, by id; they are the former one's
 * @param rest what the new one is asked for
 * @param payments by which he is
 * @param visits of the calendar that are due to him
 * @param until the last day of the term, as it was
 * @param tried whether nothing was stored
 */
public record AgreementTransfer(String agreement, String next, LocalDate from, LocalDate until, String former,
        String formerName, String owner, String ownerName, Optional<Back> back, List<BookedPaper> credits,
        List<Integer> unbilled, List<String> toBill, List<Rest> rest, List<Payment> payments, List<Visit> visits,
        boolean tried) {

    public AgreementTransfer {
        credits = List.copyOf(credits);
        unbilled = List.copyOf(unbilled);
        toBill = List.copyOf(toBill);
        rest = List.copyOf(rest);
        payments = List.copyOf(payments);
        visits = List.copyOf(visits);
    }

    /**
     * What is asked for at a site.
     *
     * @param site its name
     * @param how it was figured
     * @param why in words
     */
    public record Rest(String site, MonetaryAmount amount, String how, List<String> why) {
        public Rest {
            why = List.copyOf(why);
        }
    }

    /**
     * A payment.
     *
     * @param how it was figured
     */
    public record Payment(int number, LocalDate due, MonetaryAmount net, String how) {}

    /**
     * A visit that is due.
     *
     * @param site its name
     * @param scope in the reader's language
     */
    public record Visit(LocalDate day, String site, String scope) {}
}
