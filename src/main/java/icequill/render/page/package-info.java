/**
 * What templates read, and how little they can reach by it; enter at {@link icequill.render.page.Page}.
 */
@NullMarked
package icequill.render.page;

import org.jspecify.annotations.NullMarked;
