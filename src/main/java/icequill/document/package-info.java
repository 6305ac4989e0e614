/**
 * The papers as immutable data, holding only what a customer may see; enter at {@link icequill.document.Paper}.
 */
@NullMarked
package icequill.document;

import org.jspecify.annotations.NullMarked;
