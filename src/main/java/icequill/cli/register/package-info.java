/**
 * Commands for customers, contacts, sites and machines; enter at {@link icequill.cli.register.CustomerCommand}.
 */
@NullMarked
package icequill.cli.register;

import org.jspecify.annotations.NullMarked;
