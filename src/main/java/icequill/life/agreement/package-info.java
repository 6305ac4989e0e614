/**
 * What becomes of an agreement: it is in force until somebody ends it, or its term does; enter at
 * {@link icequill.life.agreement.AgreementState#step}.
 */
@NullMarked
package icequill.life.agreement;

import org.jspecify.annotations.NullMarked;
