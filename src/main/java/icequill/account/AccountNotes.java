package icequill.account;

import icequill.problem.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a shop knows of a customer's account and no paper of the book says.
 *
 * @param earlier bills from before there was a book, and payments of that time
 * @param disputed what the customer objects to
 * @param late own terms for paying late; empty for the shop's
 * @param reminded days of earlier reminders
 */
public record AccountNotes(Account earlier, List<Disputed> disputed, Optional<LateTerms> late,
        List<LocalDate> reminded) {

    /**
     * An invoice that the customer objects to.
     *
     * @param amount that he holds back; empty for all that is open
     */
    public record Disputed(String number, String reason, Optional<MonetaryAmount> amount, Place place) {}

    public AccountNotes {
        disputed = List.copyOf(disputed);
        reminded = List.copyOf(reminded);
    }
}
