/**
 * Repairs that were accepted; enter at {@link icequill.answer.job.JobSheet}.
 */
@NullMarked
package icequill.answer.job;

import org.jspecify.annotations.NullMarked;
