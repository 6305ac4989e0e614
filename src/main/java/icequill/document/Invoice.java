package icequill.document;

import icequill.explain.Phrase;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.tax.TaxTotal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What the customer is asked to pay for one visit.
 *
 * @param number empty while it is a draft
 * @param vendorNumber the shop's number in the customer's books
 * @param remarks about prices, taxes and terms
 * @param advanced what was asked for before, and taken off by the last lines; empty where nothing was
 */
public record Invoice(Optional<String> number, LocalDate date, LocalDate due, Shop shop, Language language,
        PaperSize size,
        BillTo billTo, Optional<String> vendorNumber, VisitSummary attended, List<MachineReport> machines,
        List<InvoiceLine> lines, Totals totals, List<Phrase> remarks, Optional<Advanced> advanced)
        implements
        Bill {

    /**
     * What was asked for before the work was done.
     *
     * @param whole the sums of the work, as if nothing had been
     * @param lines how many take it off, at the end
     */
    public record Advanced(Totals whole, List<AdvanceBill> bills, int lines) {
        public Advanced {
            bills = List.copyOf(bills);
        }
    }

    /**
     * An invoice of a part of the work, with what is held back of it, less what of it was given back.
     *
     * @param taxes by rate
     */
    public record AdvanceBill(String number, LocalDate date, MonetaryAmount net, List<TaxTotal> taxes,
            MonetaryAmount tax, MonetaryAmount gross) {
        public AdvanceBill {
            taxes = List.copyOf(taxes);
        }
    }

    /** Of which nothing was asked for before. */
    public Invoice(Optional<String> number, LocalDate date, LocalDate due, Shop shop, Language language, PaperSize size,
            BillTo billTo, Optional<String> vendorNumber, VisitSummary attended, List<MachineReport> machines,
            List<InvoiceLine> lines, Totals totals, List<Phrase> remarks) {
        this(number, date, due, shop, language, size, billTo, vendorNumber, attended, machines, lines, totals, remarks,
                Optional.empty());
    }

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
