package icequill.document;

import icequill.explain.Phrase;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.party.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the customer is asked to pay for a stretch of an agreement.
 *
 * @param number empty while it is a draft
 * @param agreement its number
 * @param payment which of the payments, from 1; those for months after the term are numbered apart
 * @param payments how many the term has
 * @param served where, and the days that the payment is for
 * @param lines one, at the tax of its own date
 * @param remarks about taxes
 */
public record InstallmentInvoice(Optional<String> number, LocalDate date, LocalDate due, Shop shop, Language language,
        PaperSize size, BillTo billTo, Optional<String> vendorNumber, String agreement, Wording plan, int payment,
        int payments, ServicePeriod served, List<InvoiceLine> lines, Totals totals, List<Phrase> remarks)
        implements Bill {

    public InstallmentInvoice {
        lines = List.copyOf(lines);
        remarks = List.copyOf(remarks);
    }

    @Override
    public Optional<LocalDate> dueDate() {
        return Optional.of(due);
    }
}
