/**
 * Repairs that were recommended, until somebody does them; enter at {@link icequill.life.repair.RecommendedRepair}.
 */
@NullMarked
package icequill.life.repair;

import org.jspecify.annotations.NullMarked;
