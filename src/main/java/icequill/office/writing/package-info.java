/**
 * How a paper becomes files, and how it is issued; enter at {@link icequill.office.writing.PaperWriter}.
 */
@NullMarked
package icequill.office.writing;

import org.jspecify.annotations.NullMarked;
