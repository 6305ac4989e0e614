package icequill.pricer;

import icequill.agreement.PlannedVisit;

/** A planned visit with its price at list, line by line. */
public record PricedSlot(PlannedVisit visit, PricedVisit priced) {}
