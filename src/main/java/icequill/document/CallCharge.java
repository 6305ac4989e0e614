package icequill.document;

import icequill.party.Wording;
import icequill.work.Band;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a call to a site costs in one labor band, before tax.
 *
 * @param serviceCall for coming out
 * @param includes minutes at the site that this pays for
 * @param grades what an hour of each grade costs
 * @param least what the shortest call comes to: the service call, and the least that is billed of the first grade
 * @param eachDay whether each day on which somebody comes pays for coming out
 */
public record CallCharge(Band band, MonetaryAmount serviceCall, Optional<Integer> includes, List<Hour> grades,
        MonetaryAmount least, Optional<Boolean> eachDay) {

    /**
     * An hour of one grade.
     *
     * @param minimum minutes billed at least
     * @param firstHour price of the first hour, where it has its own
     * @param travel price of an hour on the road, where it has its own
     * @param overtime what an hour costs on a long visit, where that is more
     */
    public record Hour(Wording grade, MonetaryAmount price, int minimum, Optional<MonetaryAmount> firstHour,
            Optional<MonetaryAmount> travel, Optional<Overtime> overtime) {}

    /**
     * What an hour of a long visit costs.
     *
     * @param after minutes of one person on one visit
     */
    public record Overtime(int after, MonetaryAmount price) {}

    public CallCharge {
        grades = List.copyOf(grades);
    }
}
