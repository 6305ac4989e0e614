/**
 * Papers into HTML and PDF; enter at {@link icequill.render.Printer}.
 */
@NullMarked
package icequill.render;

import org.jspecify.annotations.NullMarked;
