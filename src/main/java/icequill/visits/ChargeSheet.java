package icequill.visits;

import icequill.document.InvoiceLine;
import icequill.document.Totals;
import icequill.money.Amounts;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.pricer.PricedLine;
import icequill.pricer.PricedVisit;
import icequill.tax.LineTax;
import icequill.tax.TaxedVisit;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The lines and sums of a priced and taxed visit as its customer sees them. */
public record ChargeSheet(Site site, TaxedVisit taxed) {

    public List<InvoiceLine> lines() {
        PricedVisit priced = taxed.priced();
        return IntStream.range(0, priced.lines().size())
                .mapToObj(i -> line(priced.lines().get(i), taxed.lines().get(i))).toList();
    }

    private InvoiceLine line(PricedLine line, LineTax tax) {
        return new InvoiceLine(line.chargeClass(), line.outcome(), line.text(),
                line.machine().flatMap(site::machine).map(Machine::where), line.quantity(), line.unitPrice(),
                line.list(),
                line.allowance(), line.net(), line.how(), tax);
    }

    public Totals totals() {
        PricedVisit priced = taxed.priced();
        Optional<Totals.Discount> discount = priced.discount()
                .map(off -> new Totals.Discount(off.text(), off.amount(), off.how()));
        return new Totals(Amounts.sum(priced.lines().stream().map(PricedLine::net).toList(), priced.currency()),
                discount,
                priced.net(), taxed.place(), taxed.totals(), taxed.tax(), taxed.gross());
    }
}
