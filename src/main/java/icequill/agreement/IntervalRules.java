package icequill.agreement;

import java.math.BigDecimal;

/**
 * By how many months the shop shortens the cleaning interval, each from 0 to 5.
 *
 * @param hardFrom hardness of the water, mg/l as CaCO3, from which it counts as hard
 */
public record IntervalRules(BigDecimal hardFrom, int hardWater, int heat, int grease) {}
