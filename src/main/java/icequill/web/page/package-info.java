/**
 * What pages share: what is asked for, how it is answered as a page or as JSON, and in which language; enter at
 * {@link icequill.web.page.PageHandler}.
 */
@NullMarked
package icequill.web.page;

import org.jspecify.annotations.NullMarked;
