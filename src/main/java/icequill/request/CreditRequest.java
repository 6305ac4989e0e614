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
 */
public record CreditRequest(CreditNote.Original invoice, String visit, String reason, List<Integer> lines,
        List<List<Integer>> before, Place place) {

    public CreditRequest {
        lines = List.copyOf(lines);
        before = before.stream().map(List::copyOf).toList();
    }
}
