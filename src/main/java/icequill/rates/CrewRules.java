package icequill.rates;

import icequill.problem.Check;
import icequill.work.TechnicianCertificate;
import java.util.List;
import java.util.Optional;

/**
 * What the shop, or a law, asks of everybody on a visit.
 *
 * @param rest the break that everybody gets; empty where the visit  gives none
 * @param certificates of those who may handle refrigerant
 */
public record CrewRules(Optional<Break> rest, OnRoof onRoof, List<TechnicianCertificate> certificates) {

    /** Where nothing is said. */
    public static final CrewRules NONE = new CrewRules(Optional.empty(), OnRoof.ALONE, List.of());

    public CrewRules {
        certificates = List.copyOf(certificates);
    }

    /**
     * A break.
     *
     * @param after minutes of work and walks after which it is due at the latest
     * @param minutes that it lasts
     */
    public record Break(int after, int minutes) {
        public Break {
            Check.inRange(after, 1, Integer.MAX_VALUE, "after");
            Check.inRange(minutes, 1, Integer.MAX_VALUE, "minutes");
        }
    }

    /** Who must be there besides somebody who works on a roof, or where he may fall. */
    public enum OnRoof {
        ALONE,
        /** Somebody else is on site. */
        ACCOMPANIED,
        /** Two do the work together. */
        TOGETHER
    }
}
