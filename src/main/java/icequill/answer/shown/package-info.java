/**
 * Whatever the book holds under one name; enter at {@link icequill.answer.shown.Shown}.
 */
@NullMarked
package icequill.answer.shown;

import org.jspecify.annotations.NullMarked;
