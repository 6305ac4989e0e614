package icequill.request;

import icequill.document.CreditNote;
import icequill.problem.Place;
import java.util.List;

/**
 * What the office wants credited.
 *
 * @param visit the file of the visit that the invoice billed, from the shop folder on
 * @param reason printed for the customer
 * @param lines of the invoice as it is printed, from 1; empty for all that are not credited yet
 * @param before the lines that each earlier credit note gave back, one list for each, in their order
 * @param place of the lines
 * @param placeBefore of the lines of the earlier credit notes
 */
public record CreditRequest(CreditNote.Original invoice, String visit, String reason, List<Integer> lines,
        List<List<Integer>> before, Place place, Place placeBefore) {

    public CreditRequest {
        lines = List.copyOf(lines);
        before = before.stream().map(List::copyOf).toList();
    }

    /** What one of the earlier credit notes was asked to give back. */
    public CreditRequest earlier(List<Integer> note) {
        return new CreditRequest(invoice, visit, reason, note, List.of(), placeBefore, placeBefore);
    }
}
