/**
 * Work that takes long, of which pages tell how far it is; enter at {@link icequill.web.run.Runs}.
 */
@NullMarked
package icequill.web.run;

import org.jspecify.annotations.NullMarked;
