/**
 * What a form can be filled in with; enter at {@link icequill.answer.entry.VisitChoices}.
 */
@NullMarked
package icequill.answer.entry;

import org.jspecify.annotations.NullMarked;
