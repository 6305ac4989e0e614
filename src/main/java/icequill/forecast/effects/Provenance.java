package icequill.forecast.effects;

import java.util.Arrays;
import java.util.Comparator;

/** Where a value comes from, the surest first. */
public enum Provenance {
    /** The customer's own: a nameplate, a bill, what he says of his machines. */
    OWN,
    /** A published source that was read. */
    PUBLISHED,
    /** What other values lead to by physics or arithmetic. */
    DERIVED,
    /** A custom of the trade. */
    COMMON_PRACTICE,
    /** A published source as somebody recalls it; to be looked up before it is quoted. */
    FROM_MEMORY;

    /** That of a result: the least sure of what it rests on. */
    public static Provenance weakest(Provenance first, Provenance... others) {
        return Arrays.stream(others).reduce(first,
                (one, other) -> Comparator.<Provenance>naturalOrder().compare(one, other) < 0 ? other : one);
    }
}
