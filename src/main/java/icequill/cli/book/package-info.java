/**
 * Commands for a shop as a whole and for its book; enter at {@link icequill.cli.book.NewCommand}.
 */
@NullMarked
package icequill.cli.book;

import org.jspecify.annotations.NullMarked;
