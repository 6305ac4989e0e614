/**
 * Agreements told from the steps that the book keeps of them; enter at {@link icequill.shop.steps.AgreementSteps}.
 */
@NullMarked
package icequill.shop.steps;

import org.jspecify.annotations.NullMarked;
