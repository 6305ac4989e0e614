/**
 * What is wrong with input: a code, a message and a place; enter at {@link icequill.problem.Validated}, a value or its
 * problems.
 */
@NullMarked
package icequill.problem;

import org.jspecify.annotations.NullMarked;
