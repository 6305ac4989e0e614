package icequill.papers;

import icequill.document.Bill;
import icequill.document.CombinedInvoice;
import icequill.document.CombinedInvoice.Part;
import icequill.document.CreditNote;
import icequill.document.Invoice;
import icequill.document.InvoiceLine;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.money.Amounts;
import icequill.money.Rounding;
import icequill.rates.CardCost;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
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

    /**
     * What it cost the shop that a part of the invoice was paid by card; of an invoice of several visits this one bears as large a part as
     * it has of the sum before tax.
     *
     * @param payment the whole of it
     * @param share what of it is for the invoice
     */
    public MonetaryAmount cardCost(CardCost cost, MonetaryAmount payment, MonetaryAmount share) {
        CurrencyUnit currency = invoice.totals().gross().getCurrency();
        MonetaryAmount own = Amounts.sum(new BilledVisit(invoice, visit, List.of()).nets(), currency);
        if (own.isZero()) {
            return own;
        }
        Figure fee = Figure.percent(cost.percent()).times(Figure.price(share, "")).plus(
                Figure.price(cost.each(), "").times(Figure.price(share, "")).over(Figure.price(payment, "")));
        Figure part = invoice instanceof CombinedInvoice
                ? fee.times(Figure.price(own, "")).over(Figure.price(invoice.totals().net(), ""))
                : fee;
        return Explanation.of(part.rounded(Rounding.COST, currency)).amount(currency);
    }

    /** Of each line as the invoice counts them, whether it belongs to the visit. */
    private List<Boolean> mine() {
        List<Boolean> mine = new ArrayList<>();
        if (invoice instanceof CombinedInvoice combined) {
            for (Part part : combined.parts()) {
                done(part.lines()).forEach(line -> mine.add(part.attended().visit().equals(visit)));
            }
        } else {
            int count = Math.toIntExact(done(invoice.lines()).count());
            int own = count
                    - (invoice instanceof Invoice one ? one.advanced().map(Invoice.Advanced::lines).orElse(0) : 0);
            IntStream.range(0, count).forEach(i -> mine.add(i < own));
        }
        return mine;
    }

    private static Stream<InvoiceLine> done(List<InvoiceLine> lines) {
        return lines.stream().filter(line -> line.outcome().isDone());
    }
}
