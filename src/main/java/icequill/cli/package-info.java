/**
 * The command line: one class per command, which reads its options, asks the office and prints; enter at
 * {@link icequill.cli.Main}.
 */
@NullMarked
package icequill.cli;

import org.jspecify.annotations.NullMarked;
