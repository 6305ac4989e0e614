package icequill.office.quoting;

import icequill.agreement.GoingOn;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What an agreement has that its quote does not say. Whatever is left empty is as usual.
 *
 * @param existing the number of an agreement that the book has already, which the quote became; empty to make one
 * @param number usually the next of its year that no other has
 * @param start usually that of the quote, or the day of acceptance where that is later
 * @param cancelDays of notice within the term; usually as the shop has it
 * @param goingOn after the term; usually for another
 * @param months for which it goes on; usually as the shop has it, or as long as the term
 * @param refuseDays by which the customer says that it is not to go on; usually as the shop has it
 * @param raise of the price then, in percent; usually settled when the time comes
 */
public record AgreementWish(Optional<String> existing, Optional<String> number, Optional<LocalDate> start,
        Optional<Integer> cancelDays,
        Optional<GoingOn> goingOn, Optional<Integer> months, Optional<Integer> refuseDays,
        Optional<BigDecimal> raise) {

    public static final AgreementWish USUAL = new AgreementWish(Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(),
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** That the quote became an agreement which the book has. */
    public static AgreementWish of(String existing) {
        return new AgreementWish(Optional.of(existing), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
