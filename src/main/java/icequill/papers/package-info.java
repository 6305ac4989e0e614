/**
 * Priced visits, plans and accounts made into papers; enter at {@link icequill.papers.InvoiceAssembly}.
 */
@NullMarked
package icequill.papers;

import org.jspecify.annotations.NullMarked;
