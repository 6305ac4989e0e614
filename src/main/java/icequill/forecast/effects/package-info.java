/**
 * What stands beside the cash, each figure with where it comes from: energy, ice, the life of machines, water and scale; enter
 * at {@link icequill.forecast.effects.EnergyUse}.
 */
@NullMarked
package icequill.forecast.effects;

import org.jspecify.annotations.NullMarked;
