package icequill.forecast.inputs;

import icequill.party.Conditions;
import icequill.party.Conditions.Air;
import icequill.party.Site;
import icequill.party.SiteKind;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How many times as fast dirt works where air or water are worse than elsewhere.
 *
 * @param hardFrom hardness from which water is hard, mg/l as CaCO3
 */
public record SiteFactors(Speed yeast, Speed heat, Speed grease, Speed hardWater, BigDecimal hardFrom) {

    /** Of each side; 1 where nothing changes. */
    public record Speed(BigDecimal condenser, BigDecimal water) {
        public static final Speed USUAL = new Speed(BigDecimal.ONE, BigDecimal.ONE);
    }

    /** What is worse at a site. */
    public enum Kind {
        YEAST, HEAT, GREASE, HARD_WATER
    }

    /** What is worse at a site, and what it does. */
    public record Factor(Kind kind, Speed speed) {}

    /** Those that a site has, without those that change nothing. */
    public List<Factor> of(Site site) {
        return of(site.kind(), worse(site));
    }

    /** What is worse at a site, besides what is so at all of its kind. */
    public Set<Kind> worse(Site site) {
        Conditions conditions = site.conditions();
        Set<Kind> worse = EnumSet.noneOf(Kind.class);
        conditions.air().forEach(air -> worse.add(kind(air)));
        conditions.hardness().filter(hardness -> hardness.compareTo(hardFrom) >= 0)
                .ifPresent(hard -> worse.add(Kind.HARD_WATER));
        return worse;
    }

    /** Those of a kind of site where some things are worse besides, without those that change nothing. */
    public List<Factor> of(SiteKind kind, Set<Kind> worse) {
        return Stream.of(Kind.values())
                .filter(found -> worse.contains(found)
                        || kind.air().stream().map(SiteFactors::kind).anyMatch(found::equals))
                .map(found -> new Factor(found, speed(found)))
                .filter(factor -> factor.speed().condenser().compareTo(BigDecimal.ONE) != 0
                        || factor.speed().water().compareTo(BigDecimal.ONE) != 0)
                .toList();
    }

    private static Kind kind(Air air) {
        return switch (air) {
        case YEAST -> Kind.YEAST;
        case HEAT -> Kind.HEAT;
        case GREASE -> Kind.GREASE;
        };
    }

    private Speed speed(Kind kind) {
        return switch (kind) {
        case YEAST -> yeast;
        case HEAT -> heat;
        case GREASE -> grease;
        case HARD_WATER -> hardWater;
        };
    }
}
