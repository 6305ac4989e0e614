package icequill.ledger.papers;

/** The kinds of papers that bear a number. Their names are stored, so they stay. */
public enum PaperKind {
    INVOICE("INV"), CREDIT_NOTE("CN"), MAINTENANCE_QUOTE("MQ"), REPAIR_QUOTE("RQ"), SERVICE_AGREEMENT("SA"),
    RENEWAL_NOTICE(
            "RN"),
    VISIT_RECORD("VR"), STATEMENT("ST"), REMINDER("RM");

    private final String usualLetters;

    PaperKind(String usualLetters) {
        this.usualLetters = usualLetters;
    }

    /** What its numbers begin with, unless the shop sets other letters. */
    public String usualLetters() {
        return usualLetters;
    }
}
