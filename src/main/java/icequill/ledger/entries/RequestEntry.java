package icequill.ledger.entries;

/**
 * In the book, what the shop was asked for.
 *
 * @param kind of paper that is to come of it
 * @param id within its kind
 * @param data all that is known of it, as the caller writes it
 */
public record RequestEntry(String kind, String id, String site, String data) {}
