package icequill.account;

import icequill.party.BillTo;
import icequill.party.Language;
import icequill.problem.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * An account, whose it is, and what was agreed about it.
 *
 * @param id by which its papers are filed
 * @param late own terms for paying late; empty for the shop's
 * @param reminded days of earlier reminders
 */
public record AccountOf(String id, Holder holder, Account account, Optional<LateTerms> late,
        List<LocalDate> reminded) {

    /** Whose an account is. */
    public sealed interface Holder {

        /** Whoever is billed for a site on the day. */
        record Site(String id, Place place) implements Holder {}

        /** Somebody with several sites, or none. */
        record Named(BillTo billTo, Optional<Language> language, Optional<String> vendorNumber) implements Holder {}
    }

    public AccountOf {
        reminded = List.copyOf(reminded);
    }
}
