/**
 * Issued papers as JSON, there and back; enter at {@link icequill.files.paper.PaperJson}.
 */
@NullMarked
package icequill.files.paper;

import org.jspecify.annotations.NullMarked;
