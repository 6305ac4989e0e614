/**
 * What papers say in a language, with the numbers and dates of a country, and the fonts for it; enter at
 * {@link icequill.render.words.Sentences}.
 */
@NullMarked
package icequill.render.words;

import org.jspecify.annotations.NullMarked;
