/** The office that sees agreements through their lives; enter at {@link icequill.office.agreement.AgreementLifeOffice}. */
@NullMarked
package icequill.office.agreement;

import org.jspecify.annotations.NullMarked;
