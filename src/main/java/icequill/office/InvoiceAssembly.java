package icequill.office;

import icequill.document.Invoice;
import icequill.document.InvoiceLine;
import icequill.document.Totals;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.pricer.PricedLine;
import icequill.pricer.PricedVisit;
import icequill.rates.Rates;
import icequill.tax.LineTax;
import icequill.tax.TaxedVisit;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Puts an invoice together from a priced and taxed visit, leaving behind all that only the owner may see.
 *
 * @param billTo of the invoice's date
 */
record InvoiceAssembly(Shop shop, Site site, Visit visit, Rates rates, TaxedVisit taxed, BillTo billTo,
        Language language) {

    Invoice invoice(Optional<String> number, LocalDate date) {
        VisitReport report = new VisitReport(site, visit, rates, language);
        int days = site.customer().paymentDays().orElse(shop.paymentDays());
        return new Invoice(number, date, date.plusDays(days), shop, language, shop.paper(), billTo,
                site.customer().vendorNumber(), report.attended(), report.machines(), lines(), totals(), remarks());
    }

    private List<InvoiceLine> lines() {
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

    private Totals totals() {
        PricedVisit priced = taxed.priced();
        Optional<Totals.Discount> discount = priced.discount()
                .map(off -> new Totals.Discount(off.text(), off.amount(), off.how()));
        return new Totals(Amounts.sum(priced.lines().stream().map(PricedLine::net).toList(), priced.currency()),
                discount,
                priced.net(), taxed.place(), taxed.totals(), taxed.tax(), taxed.gross());
    }

    private List<Phrase> remarks() {
        List<Phrase> remarks = new ArrayList<>(taxed.remarks());
        visit.order().limit().ifPresent(limit -> remarks.add(Phrase.of("remark.limit", new Fact.Amount(limit))));
        return remarks;
    }
}
