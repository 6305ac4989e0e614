package icequill.answer.price;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What plans cost the shop and earn, in the language of the reader; the owner's alone.
 *
 * @param rows one a visit, one for included calls, and one with the sums, for each plan
 * @param movers what moves the margin of each plan, in sentences
 * @param costs how the cost of every line was figured, equal lines once
 */
public record PlanMargins(List<Row> rows, List<String> movers, List<Figured> costs) {

    /** What a row is of. */
    public enum Kind {
        VISIT, INCLUDED_CALLS, YEAR
    }

    /**
     * One of them.
     *
     * @param what the visit by day and scope, or what else it is
     * @param date of a visit
     * @param minutes of a visit, one number a person
     * @param list of a visit or a year, before the plan's discount
     * @param percent the margin's share of the price, to one decimal; missing where nothing is charged
     */
    public record Row(String plan, Kind kind, String what, Optional<LocalDate> date, List<Integer> minutes,
            Optional<MonetaryAmount> list, MonetaryAmount price, MonetaryAmount cost, MonetaryAmount margin,
            Optional<BigDecimal> percent) {}

    /** A line, how its cost was figured, and why. */
    public record Figured(String text, String how, List<String> why) {}
}
