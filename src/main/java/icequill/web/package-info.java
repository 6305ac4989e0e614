/**
 * The office in a browser: one class a page, which reads what the use cases answer; enter at {@link icequill.web.OfficeServer}.
 */
@NullMarked
package icequill.web;

import org.jspecify.annotations.NullMarked;
