/** Agreements as they stand, and what ending one comes to; enter at {@link icequill.answer.agreement.AgreementSheet}. */
@NullMarked
package icequill.answer.agreement;

import org.jspecify.annotations.NullMarked;
