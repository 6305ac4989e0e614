package icequill.work;

import java.util.Locale;
import java.util.Set;

/** What a cleaner or sanitizer is, as far as it must be kept from others. */
public enum Chemistry {
    /** Descalers. */
    ACID,
    /** Bleach and other sanitizers that set chlorine free. */
    CHLORINE, AMMONIA,
    /** Quaternary ammonium sanitizers, which are made from ammonia and often hold some. */
    QUATERNARY,
    /** Peroxyacetic acid and its like. */
    PERACID, OTHER;

    /**
     * What gives off a poisonous gas with it: chlorine with acids (CDC, MMWR 40(36), 1991), chloramines with ammonia or
     * quaternary (a toxicology foundation's page, second hand); with peracid, which is an acid (from memory).
     */
    public Set<Chemistry> poisonousWith() {
        return switch (this) {
        case CHLORINE -> Set.of(ACID, AMMONIA, QUATERNARY, PERACID);
        case ACID, AMMONIA, QUATERNARY, PERACID -> Set.of(CHLORINE);
        case OTHER -> Set.of();
        };
    }

    /** As reports name it. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
