package icequill.papers;

import icequill.document.Bill;
import icequill.document.CreditNote;
import icequill.document.InvoiceLine;
import icequill.document.LineCredit;
import icequill.money.Amounts;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * The lines of an invoice with what is left of each.
 *
 * @param before what was given back of it already
 */
record CreditLines(Bill invoice, List<CreditNote> before) {

    CreditLines {
        before = List.copyOf(before);
    }

    /** How many there are, as the invoice prints and counts them. */
    int count() {
        return billed().size();
    }

    CurrencyUnit currency() {
        return invoice.totals().gross().getCurrency();
    }

    /**
     * One of them.
     *
     * @param number from 1 to {@link #count}
     */
    LineCredit line(int number) {
        return new LineCredit(billed().get(number - 1), before.stream().flatMap(note -> given(note, number)).toList());
    }

    /** The numbers of those of which something is left. */
    List<Integer> open() {
        return IntStream.rangeClosed(1, count()).filter(number -> !line(number).isSpent()).boxed().toList();
    }

    /** What is left of all of them, after the document discount and before tax. */
    MonetaryAmount left() {
        return Amounts.sum(open().stream().map(number -> line(number).baseLeft()).toList(), currency());
    }

    private List<InvoiceLine> billed() {
        return invoice.lines().stream().filter(line -> line.outcome().isDone()).toList();
    }

    private static Stream<InvoiceLine> given(CreditNote note, int number) {
        return IntStream.range(0, note.numbers().size()).filter(i -> note.numbers().get(i) == number)
                .mapToObj(note.lines()::get);
    }
}
