package icequill.document;

import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Shop;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;

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

    /** What of a line of the original is given back, before tax. */
    public MonetaryAmount netOf(int line) {
        return Amounts.sum(IntStream.range(0, lines.size()).filter(i -> numbers.get(i) == line)
                .mapToObj(i -> lines.get(i).net()).toList(), totals.net().getCurrency());
    }

    /** Nothing is asked for. */
    @Override
    public Optional<LocalDate> dueDate() {
        return Optional.empty();
    }
}
