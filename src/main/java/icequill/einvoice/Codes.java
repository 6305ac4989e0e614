package icequill.einvoice;

import java.util.Optional;

/** Codes of published lists, as far as EN 16931 accepts them. Units have theirs in {@link icequill.work.Unit}. */
final class Codes {

    /** UNTDID 1001, kinds of documents. */
    static final String INVOICE = "380";
    static final String CREDIT_NOTE = "381";
    static final String PARTIAL = "326";
    static final String PREPAYMENT = "386";

    /** UNTDID 5189, reasons of allowances. */
    static final String SPECIAL_AGREEMENT = "64";
    static final String PRODUCTION_ERROR = "65";
    static final String DISCOUNT = "95";
    static final String SPECIAL_REBATE = "100";

    /** UNTDID 7161, reasons of charges: agreed between the parties, there being no code for a sales tax. */
    static final String MUTUALLY_DEFINED = "ZZZ";

    /** UNTDID 4461, means of payment. */
    static final String NOT_DEFINED = "1";
    static final String CREDIT_TRANSFER = "30";

    /** VATEX, reasons of exemption. */
    static final String OUTSIDE_SCOPE = "VATEX-EU-O";

    /** The rules by which a document is to be read (BT-24). */
    static final String EN16931 = "urn:cen.eu:en16931:2017";

    private Codes() {
    }

    /** VATEX code of a category of UNCL5305, where the category alone says the reason. */
    static Optional<String> exemption(String category) {
        return switch (category) {
        case "AE" -> Optional.of("VATEX-EU-AE");
        case "K" -> Optional.of("VATEX-EU-IC");
        case "G" -> Optional.of("VATEX-EU-G");
        case "O" -> Optional.of(OUTSIDE_SCOPE);
        default -> Optional.empty();
        };
    }
}
