package icequill.account;

import java.util.Optional;

/**
 * How a shop reminds.
 *
 * @param contact whom to ask for; empty for nobody in particular
 * @param phone whom to call; empty for the shop's own
 * @param payWithin days from a reminder to the day it asks to be paid by
 * @param late empty where nothing is asked for paying late
 */
public record ReminderTerms(Optional<String> contact, Optional<String> phone, int payWithin,
        Optional<LateTerms> late) {

    /** Ten days (common practice), and nothing for paying late. */
    public static final ReminderTerms USUAL = new ReminderTerms(Optional.empty(), Optional.empty(), 10,
            Optional.empty());

    /** The same with the terms that a customer has agreed to. */
    public ReminderTerms with(LateTerms agreed) {
        return new ReminderTerms(contact, phone, payWithin, Optional.of(agreed));
    }
}
