package icequill.ledger.entries;

/**
 * An agreement in the book.
 *
 * @param id lower-case letters, digits and hyphens
 * @param number of the agreement, which no other has
 * @param data all that is known of it, as the caller writes it
 */
public record AgreementEntry(String id, String number, String site, String data) {}
