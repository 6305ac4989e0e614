/**
 * Lists of what the book holds; enter at {@link icequill.answer.register.CustomerList}.
 */
@NullMarked
package icequill.answer.register;

import org.jspecify.annotations.NullMarked;
