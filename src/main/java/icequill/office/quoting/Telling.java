package icequill.office.quoting;

/**
 * What is told of a quote beside its prices.
 *
 * @param isAhead whether calls are looked ahead, which takes seconds
 * @param isForOwner whether what the shop earns is told
 */
public record Telling(boolean isAhead, boolean isForOwner) {

    /** Prices alone. */
    public static final Telling PRICES = new Telling(false, false);
    /** All that customers may see. */
    public static final Telling ALL = new Telling(true, false);
}
