/**
 * Printing that ends, whatever a template asks for; enter at {@link icequill.render.limits.PrintRoom}.
 */
@NullMarked
package icequill.render.limits;

import org.jspecify.annotations.NullMarked;
