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
 * What the customer gets back of one invoice, in whole or in part.
 *
 * @param number empty while it is a draft
 * @param original the invoice it corrects
 * @param reason as the office wrote it
 * @param lines of the original that are credited
 * @param numbers of these lines as the original counts them, from 1
 * @param remarks about taxes and terms
 */
public record CreditNote(Optional<String> number, LocalDate date, Original original, String reason, Shop shop,
        Language language, PaperSize size, BillTo billTo, Optional<String> vendorNumber, ServicePeriod served,
        List<InvoiceLine> lines, List<Integer> numbers, Totals totals, List<Phrase> remarks) implements Bill {

    /** The invoice that a credit note corrects. */
    public record Original(String number, LocalDate date) {}

    public CreditNote {
        lines = List.copyOf(lines);
        numbers = List.copyOf(numbers);
        remarks = List.copyOf(remarks);
    }

    /** Nothing is asked for. */
    @Override
    public Optional<LocalDate> dueDate() {
        return Optional.empty();
    }
}
