/**
 * What commands share: their options, tables, exit codes, and how problems are told; enter at
 * {@link icequill.cli.terminal.Printout}.
 */
@NullMarked
package icequill.cli.terminal;

import org.jspecify.annotations.NullMarked;
