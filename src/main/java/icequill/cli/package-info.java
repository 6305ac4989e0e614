/**
 * The command line: all commands in their order; enter at {@link icequill.cli.Main}.
 */
@NullMarked
package icequill.cli;

import org.jspecify.annotations.NullMarked;
