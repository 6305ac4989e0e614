/**
 * Commands for invoices, credit notes, payments, and papers that were issued; enter at {@link icequill.cli.billing.InvoiceCommand}.
 */
@NullMarked
package icequill.cli.billing;

import org.jspecify.annotations.NullMarked;
