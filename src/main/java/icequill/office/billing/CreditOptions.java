package icequill.office.billing;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.request.CreditPart;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is to be given back of an invoice.
 *
 * @param lines as the invoice counts them, from 1; empty for all that are not given back yet
 * @param part what goes back of them
 * @param reason printed for the customer
 * @param reissue what the invoice is to be issued anew with; empty when it is only given back
 */
public record CreditOptions(List<Integer> lines, CreditPart part, String reason, LocalDate date,
        Optional<Reissue> reissue, Booking booking) {

    /** Letters of a reason, as many as any note of a form. */
    private static final int LONGEST_REASON = 2000;

    /** That a reason is longer than a paper's, where it is. */
    public static Optional<Problem> tooLong(String reason, Place place) {
        return Optional.of(reason).filter(text -> text.length() > LONGEST_REASON)
                .map(text -> new Problem(Code.TOO_LARGE, place, "the reason has " + text.length() + " letters",
                        "at most " + LONGEST_REASON));
    }

    public CreditOptions(List<Integer> lines, String reason, LocalDate date, Optional<Reissue> reissue) {
        this(lines, CreditPart.Rest.REST, reason, date, reissue, Booking.USUAL);
    }

    /**
     * What is different on the invoice that is issued instead.
     *
     * @param purchaseOrder empty to leave it as it is
     * @param billTo a customer of the book, by id, or no letters for the site's own as he stands now; empty to leave it
     */
    public record Reissue(Optional<String> purchaseOrder, Optional<String> billTo, Due due) {}

    /** When the invoice that is issued instead is to be paid. */
    public enum Due {
        /** On the day that the first one named. */
        KEEP,
        /** After as many days as the first one gave, counted from its own date. */
        RESTART
    }

    public CreditOptions {
        lines = List.copyOf(lines);
    }
}
