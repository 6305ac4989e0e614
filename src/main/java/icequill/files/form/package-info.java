/**
 * Reads what is handed over in forms: sites, visits, requests, agreements, accounts, the shop's settings, tables of runs;
 * enter at {@link icequill.files.form.VisitReader}.
 */
@NullMarked
package icequill.files.form;

import org.jspecify.annotations.NullMarked;
