/**
 * Files so written that nothing is ever half there, and their owner's alone; lists of comma-separated values; enter at
 * {@link icequill.files.disk.SafeFile}.
 */
@NullMarked
package icequill.files.disk;

import org.jspecify.annotations.NullMarked;
