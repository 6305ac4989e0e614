/**
 * What visits and plans cost and earn, as data; enter at {@link icequill.answer.price.VisitPrice}.
 */
@NullMarked
package icequill.answer.price;

import org.jspecify.annotations.NullMarked;
