/**
 * The ways of looking after a site looked ahead, brushing that a customer does himself, fits, and a year looked back at; enter
 * at {@link icequill.outlook.SiteForecast}.
 */
@NullMarked
package icequill.outlook;

import org.jspecify.annotations.NullMarked;
