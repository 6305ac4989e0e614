package icequill.document;

import icequill.explain.Phrase;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the customer is asked to pay for one visit.
 *
 * @param number empty while it is a draft
 * @param vendorNumber the shop's number in the customer's books
 * @param remarks about prices, taxes and terms
 */
public record Invoice(Optional<String> number, LocalDate date, LocalDate due, Shop shop, Language language,
        PaperSize size,
        BillTo billTo, Optional<String> vendorNumber, VisitSummary attended, List<MachineReport> machines,
        List<InvoiceLine> lines, Totals totals, List<Phrase> remarks)
        implements
        Bill {

    public Invoice {
        machines = List.copyOf(machines);
        lines = List.copyOf(lines);
        remarks = List.copyOf(remarks);
    }

    @Override
    public ServicePeriod served() {
        return new ServicePeriod(attended.site(), attended.storeNumber(), attended.address(),
                attended.order().purchaseOrder(), attended.arrived().toLocalDate(), attended.left().toLocalDate());
    }

    @Override
    public Optional<LocalDate> dueDate() {
        return Optional.of(due);
    }
}
