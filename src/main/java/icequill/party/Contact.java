package icequill.party;

import java.util.Optional;
import java.util.Set;

/**
 * Whom to turn to at a customer's or a site's.
 *
 * @param name of the person or the department
 * @param purposes what to turn there for; none where nobody said
 */
public record Contact(String name, Optional<String> role, Set<Purpose> purposes, Optional<String> telephone,
        Optional<String> email) {

    /** What a contact is for. */
    public enum Purpose {
        /** Bills, statements and reminders go there. */
        BILLS,
        /** Lets technicians in and shows them the machines. */
        VISITS,
        /** Quotes, agreements and notices of renewal go there. */
        RENEWALS,
        /** Says yes to work beyond a limit. */
        APPROVALS
    }

    public Contact {
        purposes = Set.copyOf(purposes);
    }
}
