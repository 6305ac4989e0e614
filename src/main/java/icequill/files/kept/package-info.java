/** What was found out before, in files that may be deleted at any time; enter at {@link icequill.files.kept.FolderShelf}. */
@NullMarked
package icequill.files.kept;

import org.jspecify.annotations.NullMarked;
