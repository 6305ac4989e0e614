package icequill.document;

import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.work.PurchaseOrder;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What a customer is asked to pay for several visits together, at one site or at several.
 *
 * @param number empty while it is a draft
 * @param vendorNumber the shop's number in the customer's books
 * @param parts one for each visit, two or more, in the order of the visits; all under the same purchase order
 * @param totals of all of them
 * @param remarks about prices, taxes and terms
 */
public record CombinedInvoice(Optional<String> number, LocalDate date, LocalDate due, Shop shop, Language language,
        PaperSize size, BillTo billTo, Optional<String> vendorNumber, List<Part> parts, Totals totals,
        List<Phrase> remarks) implements Bill {

    /** One visit, and what is charged for it. */
    public record Part(VisitSummary attended, List<MachineReport> machines, List<InvoiceLine> lines) {

        public Part {
            machines = List.copyOf(machines);
            lines = List.copyOf(lines);
        }

        /** The nets of its lines together, before a discount on the whole invoice. */
        public MonetaryAmount sum(CurrencyUnit currency) {
            return Amounts.sum(lines.stream().map(InvoiceLine::net).toList(), currency);
        }
    }

    public CombinedInvoice {
        parts = List.copyOf(parts);
        remarks = List.copyOf(remarks);
    }

    @Override
    public ServicePeriod served() {
        List<VisitSummary> visits = parts.stream().map(Part::attended).toList();
        List<String> sites = visits.stream().map(VisitSummary::site).distinct().toList();
        List<Optional<String>> stores = visits.stream().map(VisitSummary::storeNumber).distinct().toList();
        VisitSummary first = visits.getFirst();
        LocalDate until = visits.stream().map(visit -> visit.left().toLocalDate()).max(LocalDate::compareTo)
                .orElseThrow();
        long places = visits.stream().map(visit -> List.of(visit.site(), visit.address())).distinct().count();
        return new ServicePeriod(String.join("; ", sites), stores.size() == 1 ? stores.getFirst() : Optional.empty(),
                first.address(), Optional.of(first.order()).flatMap(PurchaseOrder::purchaseOrder),
                first.arrived().toLocalDate(), until, places > 1 ? Optional.of(true) : Optional.empty());
    }

    @Override
    public List<InvoiceLine> lines() {
        return parts.stream().flatMap(part -> part.lines().stream()).toList();
    }

    @Override
    public Optional<LocalDate> dueDate() {
        return Optional.of(due);
    }

    /** What the visits are called, with commas between. */
    public String visits() {
        return parts.stream().map(part -> part.attended().visit()).collect(Collectors.joining(", "));
    }

    /** The machines of all parts. */
    public Stream<MachineReport> machines() {
        return parts.stream().flatMap(part -> part.machines().stream());
    }
}
