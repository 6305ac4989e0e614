package icequill.party;

/** The two sheets that offices of the world print on. */
public enum PaperSize {
    LETTER, A4
}
