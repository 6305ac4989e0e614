/**
 * Reads the shop folder's YAML into the pure types and writes files so that nothing is ever half-written; enter at
 * {@link icequill.files.ShopFolder}.
 *
 * <p>Reading goes on past a fault: what cannot be read is reported and left out, the rest is still checked, so that one run
 * reports all problems of all files.
 */
@NullMarked
package icequill.files;

import org.jspecify.annotations.NullMarked;
