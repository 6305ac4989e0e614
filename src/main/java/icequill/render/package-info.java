/**
 * Papers into HTML and PDF: words and formats of a language and country, templates, fonts; enter at
 * {@link icequill.render.Printer}.
 */
@NullMarked
package icequill.render;

import org.jspecify.annotations.NullMarked;
