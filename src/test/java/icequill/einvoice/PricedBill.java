package icequill.einvoice;

import icequill.document.CreditNote;
import icequill.document.Invoice;
import icequill.document.InvoiceLine;
import icequill.document.Totals;
import icequill.document.VisitSummary;
import icequill.money.Amounts;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.pricer.PricedLine;
import icequill.pricer.PricedVisit;
import icequill.tax.LineTax;
import icequill.tax.TaxedVisit;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A bill of what the pricer and the tax calculator made of a visit. */
record PricedBill(Shop shop, Site site, Visit visit, TaxedVisit taxed) {

    Invoice invoice() {
        LocalDate date = visit.ended().toLocalDate();
        VisitSummary attended = new VisitSummary(visit.id(), site.name(), site.storeNumber(), site.address(),
                visit.call(),
                visit.order(), visit.began(), visit.ended(), List.of(), Optional.empty());
        return new Invoice(Optional.of("1"), date, date.plusDays(30), shop, Language.SPANISH, PaperSize.LETTER,
                billTo(date), site.customer().vendorNumber(), attended, List.of(), lines(), totals(), taxed.remarks());
    }

    /** All of it given back. */
    CreditNote creditNote() {
        Invoice invoice = invoice();
        return new CreditNote(Optional.of("2"), invoice.date(), new CreditNote.Original("1", invoice.date()),
                "By mistake.", shop, invoice.language(), invoice.size(), invoice.billTo(), invoice.vendorNumber(),
                invoice.served(), invoice.lines(),
                IntStream.rangeClosed(1, invoice.lines().size()).boxed().toList(), invoice.totals(), invoice.remarks());
    }

    private BillTo billTo(LocalDate date) {
        return site.customer().billTo().at(date).orElseThrow();
    }

    private List<InvoiceLine> lines() {
        PricedVisit priced = taxed.priced();
        return IntStream.range(0, priced.lines().size())
                .mapToObj(i -> line(priced.lines().get(i), taxed.lines().get(i))).toList();
    }

    private static InvoiceLine line(PricedLine line, LineTax tax) {
        return new InvoiceLine(line.chargeClass(), line.outcome(), line.text(), line.machine(), line.quantity(),
                line.unitPrice(), line.list(), line.allowance(), line.net(), line.how(), tax);
    }

    private Totals totals() {
        PricedVisit priced = taxed.priced();
        return new Totals(Amounts.sum(priced.lines().stream().map(PricedLine::net).toList(), priced.currency()),
                priced.discount().map(off -> new Totals.Discount(off.text(), off.amount(), off.how())), priced.net(),
                taxed.place(), taxed.totals(), taxed.tax(), taxed.gross());
    }
}
