package icequill.ledger.papers;

/**
 * What a paper is told when it gets its number.
 *
 * @param number as it is printed
 * @param previousSeal seals all papers of the series before this one; printed into its metadata, 64 hexadecimal digits
 * @param issuedAt a moment in UTC, to the millisecond
 */
public record Numbered(String number, String previousSeal, String issuedAt) {}
