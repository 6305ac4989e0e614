/**
 * Each paper as the texts that its template sets; enter at {@link icequill.render.view.InvoiceView}.
 */
@NullMarked
package icequill.render.view;

import org.jspecify.annotations.NullMarked;
