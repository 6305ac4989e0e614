package icequill.shop.life;

import java.time.LocalDate;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds what to call visits and calls that nobody named: readable, and for good. */
public final class FreeId {

    /** What is left of an id for the site's, beside a day and a number. */
    private static final int SITE_PART = 45;

    private FreeId() {
    }

    /** One made of a site and a day. */
    public static String of(String site, LocalDate day) {
        return of(site, day.toString());
    }

    /** The same of a day that may not be one. */
    public static String of(String site, String day) {
        return site.substring(0, Math.min(SITE_PART, site.length())) + "-" + day;
    }

    /** As proposed, or the first with a number behind it that is not taken yet. */
    public static String like(String base, Predicate<String> isTaken) {
        return Stream.concat(Stream.of(base), IntStream.iterate(2, i -> i + 1).mapToObj(i -> base + "-" + i))
                .filter(isTaken.negate()).findFirst().orElseThrow();
    }
}
