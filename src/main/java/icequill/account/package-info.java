/**
 * What a customer owes on a day: bills, credits and payments, how long each is past due, and what may be asked for paying
 * late; enter at {@link icequill.account.Account}.
 */
@NullMarked
package icequill.account;

import org.jspecify.annotations.NullMarked;
