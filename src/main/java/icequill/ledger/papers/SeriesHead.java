package icequill.ledger.papers;

/**
 * How far a series has come.
 *
 * @param papers how many there are, which is the position of the last one
 * @param seal of the last one, and through it of all
 */
public record SeriesHead(Series series, int papers, String seal) {}
