/**
 * A site at a glance; enter at {@link icequill.answer.site.SiteCard}.
 */
@NullMarked
package icequill.answer.site;

import org.jspecify.annotations.NullMarked;
