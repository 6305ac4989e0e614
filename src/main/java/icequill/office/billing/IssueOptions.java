package icequill.office.billing;

import icequill.party.Language;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a paper that is to be issued is to be like.
 *
 * @param language empty for the customer's
 */
public record IssueOptions(LocalDate date, Optional<Language> language, Booking booking) {

    public IssueOptions(LocalDate date, Optional<Language> language) {
        this(date, language, Booking.USUAL);
    }

    /** The same for a paper that has its number already. */
    PaperOptions numbered(String number) {
        return new PaperOptions(Optional.of(number), date, language, Extras.NONE);
    }
}
