package icequill.outlook;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.util.Optional;

/**
 * What is asked of a comparison besides its file.
 *
 * @param years to look ahead; empty for the shop's
 * @param interval months between the full cleanings of one more way; empty for none
 */
public record LookAhead(Optional<Integer> years, Optional<Integer> interval) {

    private static final int MOST_YEARS = 10;
    private static final int MOST_MONTHS = 60;

    /** What the shop has set. */
    public static final LookAhead USUAL = new LookAhead(Optional.empty(), Optional.empty());

    /** The same, or that it is out of bounds. */
    public Validated<LookAhead> checked() {
        Problems problems = new Problems();
        years.filter(found -> found < 1 || found > MOST_YEARS)
                .ifPresent(found -> problems.add(Code.OUT_OF_RANGE, Place.NOWHERE, "--years " + found,
                        "from 1 to " + MOST_YEARS));
        interval.filter(found -> found < 1 || found > MOST_MONTHS)
                .ifPresent(found -> problems.add(Code.OUT_OF_RANGE, Place.NOWHERE, "--interval " + found,
                        "from 1 to " + MOST_MONTHS + " months"));
        return problems.or(() -> this);
    }
}
