package icequill.shop;

import icequill.document.CombinedInvoice;
import icequill.document.Invoice;
import icequill.document.InvoiceLine;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.pricer.BlockPricing;
import icequill.problem.Validated;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * A block that was sold at a site, and whose invoice stands.
 *
 * @param form on which it stands
 * @param paid what the invoice asks for it, before tax
 * @param draws what other invoices that stand took from it
 */
public record SoldAhead(Form form, MonetaryAmount paid, List<Draw> draws) {

    /** What one visit took. */
    public record Draw(String visit, BlockPricing.Used used) {}

    /** The lines of an invoice that are a visit's. */
    private record Billed(String visit, List<InvoiceLine> lines) {}

    public SoldAhead {
        draws = List.copyOf(draws);
    }

    /**
     * Those of a site, the oldest first. Only where there are any, papers are read.
     *
     * @param known which papers count; those that were issued later than some moment may not
     */
    static List<SoldAhead> at(Reading open, String site, Predicate<IssuedPaper> known) {
        List<VisitEntry> sales = open.entries().soldAhead(site);
        return sales.isEmpty() ? List.of() : at(sales, billed(open, site, known));
    }

    private static List<SoldAhead> at(List<VisitEntry> sales, List<Billed> billed) {
        List<SoldAhead> sold = new ArrayList<>();
        for (VisitEntry sale : sales) {
            List<Draw> draws = billed.stream().flatMap(visit -> visit.lines().stream()
                    .flatMap(line -> BlockPricing.used(line.how())).filter(used -> used.sale().equals(sale.id()))
                    .map(used -> new Draw(visit.visit(), used))).toList();
            billed.stream().filter(visit -> visit.visit().equals(sale.id())).flatMap(visit -> visit.lines().stream())
                    .filter(line -> BlockPricing.isSale(line.text())).findFirst()
                    .ifPresent(line -> sold.add(new SoldAhead(Form.stored(FormKind.VISIT, sale.id(), sale.data()),
                            line.tax().base(), draws)));
        }
        return sold;
    }

    private static List<Billed> billed(Reading open, String site, Predicate<IssuedPaper> known) {
        List<String> visits = open.entries().visitsAt(site).stream().map(VisitEntry::id).toList();
        Map<String, List<IssuedPaper>> papers = open.papers().ofVisits(visits);
        return papers.values().stream().flatMap(List::stream).distinct()
                .filter(paper -> paper.series().kind() == PaperKind.INVOICE && known.test(paper))
                .filter(paper -> !paper.isGivenBackBy(
                        open.papers().creditsOf(paper.number()).stream().filter(known).toList()))
                .sorted(Comparator.comparing(IssuedPaper::number))
                .flatMap(paper -> billed(open, paper)).toList();
    }

    private static Stream<Billed> billed(Reading open, IssuedPaper paper) {
        return switch (BookedPapers.paper(open, paper)) {
        case Validated.Valid<?>(Invoice invoice) -> Stream
                .of(new Billed(invoice.attended().visit(), invoice.lines()));
        case Validated.Valid<?>(CombinedInvoice invoice) -> invoice.parts().stream()
                .map(part -> new Billed(part.attended().visit(), part.lines()));
        default -> Stream.empty();
        };
    }
}
