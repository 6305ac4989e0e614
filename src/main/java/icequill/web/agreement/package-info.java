/** Pages of agreements; enter at {@link icequill.web.agreement.AgreementPage}. */
@NullMarked
package icequill.web.agreement;

import org.jspecify.annotations.NullMarked;
