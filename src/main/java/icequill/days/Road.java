package icequill.days;

/**
 * The way to a site, as far as it is known: the minutes from the shop, and in which postal area it is. Sites of one area are taken to lie on
 * one road; between others nobody knows the way, so that it is counted as over the shop.
 *
 * @param site by id
 * @param minutes from the shop
 * @param area postal code, with its country
 */
public record Road(String site, int minutes, String area) {

    /** Least minutes from one site to another of the same area (our estimate). */
    private static final int ACROSS = 10;

    boolean isNear(Road other) {
        return area.equals(other.area);
    }

    /** Minutes of driving from one to the other. */
    int to(Road other) {
        int over = minutes + other.minutes;
        if (site.equals(other.site)) {
            return 0;
        }
        return isNear(other) ? Math.max(Math.abs(minutes - other.minutes), Math.min(ACROSS, over)) : over;
    }
}
