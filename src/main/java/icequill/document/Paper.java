package icequill.document;

import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import java.time.LocalDate;

/**
 * A document. It holds only what its reader may see; all but {@link OwnersOutlook} and {@link FitSheet} are made to leave the shop.
 */
public sealed interface Paper permits PricedPaper, MaintenanceQuote,
        ServiceAgreement, RenewalNotice, VisitRecord, VisitAnnouncement, RefrigerantRecord, WorkSheet, BrushingSheet,
        BrushingSheetPair,
        ComparisonSheet, OwnersOutlook, FitSheet, Statement,
        Reminder {

    Shop shop();

    Language language();

    PaperSize size();

    /** The day it bears. */
    LocalDate date();
}
