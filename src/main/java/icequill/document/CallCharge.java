package icequill.document;

import icequill.party.Wording;
import icequill.work.Band;
import java.util.List;
import javax.money.MonetaryAmount;

/**
 * What a call to a site costs in one labor band, before tax.
 *
 * @param serviceCall for coming out
 * @param grades what an hour of each grade costs
 * @param least what the shortest call comes to: the service call, and the least that is billed of the first grade
 */
public record CallCharge(Band band, MonetaryAmount serviceCall, List<Hour> grades, MonetaryAmount least) {

    /**
     * An hour of one grade.
     *
     * @param minimum minutes billed at least
     */
    public record Hour(Wording grade, MonetaryAmount price, int minimum) {}

    public CallCharge {
        grades = List.copyOf(grades);
    }
}
