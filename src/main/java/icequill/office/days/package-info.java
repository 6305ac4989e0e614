/**
 * The office that plans ahead: visits that are due, their days, what customers are told, what visits took; enter at
 * {@link icequill.office.days.DueOffice}.
 */
@NullMarked
package icequill.office.days;

import org.jspecify.annotations.NullMarked;
