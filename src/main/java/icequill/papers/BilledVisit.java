package icequill.papers;

import icequill.document.Bill;
import icequill.document.CombinedInvoice;
import icequill.document.CombinedInvoice.Part;
import icequill.document.CreditNote;
import icequill.document.InvoiceLine;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * What one visit was billed at by an invoice, and what went back of it.
 *
 * @param visit by id; an invoice of several has its lines apart
 * @param credits of the invoice
 */
public record BilledVisit(Bill invoice, String visit, List<CreditNote> credits) {

    public BilledVisit {
        credits = List.copyOf(credits);
    }

    /** What is left of each line of the visit that was done, before tax and less its share of the document discount. */
    public List<MonetaryAmount> nets() {
        CreditLines lines = new CreditLines(invoice, credits);
        List<Boolean> mine = mine();
        return IntStream.range(0, mine.size()).filter(mine::get).mapToObj(i -> lines.line(i + 1).baseLeft()).toList();
    }

    /** Of each line as the invoice counts them, whether it belongs to the visit. */
    private List<Boolean> mine() {
        List<Boolean> mine = new ArrayList<>();
        if (invoice instanceof CombinedInvoice combined) {
            for (Part part : combined.parts()) {
                done(part.lines()).forEach(line -> mine.add(part.attended().visit().equals(visit)));
            }
        } else {
            done(invoice.lines()).forEach(line -> mine.add(true));
        }
        return mine;
    }

    private static Stream<InvoiceLine> done(List<InvoiceLine> lines) {
        return lines.stream().filter(line -> line.outcome().isDone());
    }
}
