package icequill.party;

import icequill.problem.Place;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A certificate that exempts a customer from sales tax in one state.
 *
 * @param state the region code of the tax places it covers
 * @param expires the last day it holds; empty for a blanket certificate
 */
public record Certificate(Kind kind, String number, String state, String reason, LocalDate signed,
        Optional<LocalDate> expires, Place place) {

    /** The kinds in common use. */
    public enum Kind {
        RESALE, EXEMPT, DIRECT_PAY
    }

    public boolean holdsOn(LocalDate day) {
        return !day.isBefore(signed) && !hasExpiredBy(day);
    }

    public boolean hasExpiredBy(LocalDate day) {
        return expires.map(day::isAfter).orElse(false);
    }
}
