package icequill.document;

import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import java.time.LocalDate;

/** A document that leaves the shop. It holds only what its reader may see. */
public sealed interface Paper permits PricedPaper, MaintenanceQuote,
        ServiceAgreement, RenewalNotice, VisitRecord, WorkSheet, BrushingSheet, ComparisonSheet, Statement, Reminder {

    Shop shop();

    Language language();

    PaperSize size();

    /** The day it bears. */
    LocalDate date();
}
