/**
 * Drawings that a browser shows and a PDF sets as lines; enter at {@link icequill.render.drawing.Drawings}.
 */
@NullMarked
package icequill.render.drawing;

import org.jspecify.annotations.NullMarked;
