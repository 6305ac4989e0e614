package icequill.rates;

import icequill.party.Conditions;
import icequill.party.Site;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

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
        Conditions conditions = site.conditions();
        List<Factor> all = new ArrayList<>();
        if (site.kind().hasYeast() || conditions.air().contains(Conditions.Air.YEAST)) {
            all.add(new Factor(Kind.YEAST, yeast));
        }
        if (conditions.air().contains(Conditions.Air.HEAT)) {
            all.add(new Factor(Kind.HEAT, heat));
        }
        if (conditions.air().contains(Conditions.Air.GREASE)) {
            all.add(new Factor(Kind.GREASE, grease));
        }
        if (conditions.hardness().filter(hardness -> hardness.compareTo(hardFrom) >= 0).isPresent()) {
            all.add(new Factor(Kind.HARD_WATER, hardWater));
        }
        return all.stream().filter(factor -> factor.speed().condenser().compareTo(BigDecimal.ONE) != 0
                || factor.speed().water().compareTo(BigDecimal.ONE) != 0).toList();
    }
}
