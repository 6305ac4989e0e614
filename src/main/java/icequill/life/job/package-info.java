/**
 * What becomes of a repair that a customer accepted: parts are ordered and come, then it is done by a visit; enter at
 * {@link icequill.life.job.JobState#step}. Whether it is billed is told by the invoices of that visit.
 */
@NullMarked
package icequill.life.job;

import org.jspecify.annotations.NullMarked;
