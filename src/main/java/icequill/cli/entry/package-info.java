/**
 * Commands for customers, sites and machines; enter at {@link icequill.cli.entry.CustomerCommand}.
 */
@NullMarked
package icequill.cli.entry;

import org.jspecify.annotations.NullMarked;
