package icequill.office.care;

import icequill.ledger.papers.PaperKind;

/** What somebody wants to be shown by its name. */
public enum Shows {

    /** Whatever has the name. */
    ANYTHING("paper, customer, site, machine, visit, agreement or request"),
    /** A paper of any kind. */
    PAPER("paper"),
    /** An invoice. */
    INVOICE("invoice"),
    /** A credit note. */
    CREDIT("credit note"),
    /** A quote of either kind. */
    QUOTE("quote"),
    /** A visit. */
    VISIT("visit");

    private final String words;

    Shows(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    boolean has(PaperKind kind) {
        return switch (this) {
        case ANYTHING, PAPER -> true;
        case INVOICE -> kind == PaperKind.INVOICE;
        case CREDIT -> kind == PaperKind.CREDIT_NOTE;
        case QUOTE -> kind == PaperKind.MAINTENANCE_QUOTE || kind == PaperKind.REPAIR_QUOTE;
        case VISIT -> false;
        };
    }

    /** Whether entries are meant at all. */
    boolean hasEntries() {
        return this == ANYTHING || this == VISIT;
    }

    boolean hasVisits() {
        return this == ANYTHING || this == VISIT;
    }
}
