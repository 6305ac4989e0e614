/**
 * Pages on what is charged: of a day, tried on past visits, raised, put into force; enter at
 * {@link icequill.web.rates.PricesPage}.
 */
@NullMarked
package icequill.web.rates;

import org.jspecify.annotations.NullMarked;
