package icequill.document;

import icequill.explain.Phrase;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.PaperSize;
import icequill.party.Shop;
import icequill.tax.Stage;
import icequill.tax.TaxTotal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What a customer is asked to pay of a repair quote that he accepted, by itself: a deposit, a part while the work goes on, or what was held
 * back of such parts.
 *
 * @param number empty while it is a draft
 * @param served where and when the work is planned, under which order
 * @param work as the quote says it
 * @param part which of the quote's parts it is, from 1
 * @param stage what is asked for
 * @param ofPart the tax of the part with what is held back of it, which the invoice of the work takes off; nothing of what is released
 * @param lines what is held back comes last
 * @param remarks about taxes
 */
public record StageInvoice(Optional<String> number, LocalDate date, LocalDate due, Shop shop, Language language,
        PaperSize size, BillTo billTo, Optional<String> vendorNumber, AcceptedQuote quote, ServicePeriod served,
        Machine machine, String work, int part, Stage stage, List<TaxTotal> ofPart, List<InvoiceLine> lines,
        Totals totals, List<Phrase> remarks) implements Bill {

    /** The quote that was accepted. */
    public record AcceptedQuote(String number, LocalDate date) {}

    public StageInvoice {
        ofPart = List.copyOf(ofPart);
        lines = List.copyOf(lines);
        remarks = List.copyOf(remarks);
    }

    @Override
    public Optional<LocalDate> dueDate() {
        return Optional.of(due);
    }
}
