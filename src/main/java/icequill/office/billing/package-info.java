/**
 * Visits recorded, invoices and quotes issued, and what was billed wrongly given back; enter at
 * {@link icequill.office.billing.RecordOffice} and {@link icequill.office.billing.VisitBilling}.
 */
@NullMarked
package icequill.office.billing;

import org.jspecify.annotations.NullMarked;
