/**
 * Pages of HTML as PDF/A that can be read aloud; enter at {@link icequill.render.pdf.PdfSetter}.
 */
@NullMarked
package icequill.render.pdf;

import org.jspecify.annotations.NullMarked;
