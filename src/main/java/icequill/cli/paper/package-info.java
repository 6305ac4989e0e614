/**
 * Commands that make papers from files; enter at {@link icequill.cli.paper.InvoiceCommand}.
 */
@NullMarked
package icequill.cli.paper;

import org.jspecify.annotations.NullMarked;
