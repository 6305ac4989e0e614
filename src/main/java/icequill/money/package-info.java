/**
 * Amounts, percentages, named roundings and shares that add up; enter at {@link icequill.money.Amounts}.
 */
@NullMarked
package icequill.money;

import org.jspecify.annotations.NullMarked;
