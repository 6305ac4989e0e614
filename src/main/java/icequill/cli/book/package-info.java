/**
 * Commands that work with the book, and those for a shop as a whole; enter at {@link icequill.cli.book.IssueCommand}.
 */
@NullMarked
package icequill.cli.book;

import org.jspecify.annotations.NullMarked;
