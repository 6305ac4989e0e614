package icequill.document;

import icequill.explain.Explanation;
import icequill.explain.Phrase;
import icequill.pricer.UnitPrice;
import icequill.tax.LineTax;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import icequill.work.Quantity;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A line as the customer sees it.
 *
 * @param machine where it stands, if the line was for one machine
 * @param allowance taken off the list price
 */
public record InvoiceLine(ChargeClass chargeClass, Outcome outcome, Phrase text, Optional<String> machine,
        Quantity quantity, Optional<UnitPrice> unitPrice, MonetaryAmount list, MonetaryAmount allowance,
        MonetaryAmount net, Explanation how, LineTax tax) {}
