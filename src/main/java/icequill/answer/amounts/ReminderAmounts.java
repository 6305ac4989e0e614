package icequill.answer.amounts;

import icequill.account.Claim;
import icequill.document.Reminder;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Of a reminder.
 *
 * @param disputed bills that are not asked for
 * @param forPayingLate interest and compensation
 */
public record ReminderAmounts(List<Asked> claims, List<OpenBill> disputed, MonetaryAmount asked,
        MonetaryAmount forPayingLate, MonetaryAmount total) implements PaperAmounts {

    /**
     * A bill that is asked for.
     *
     * @param setOff negative: what is to the customer's credit
     */
    public record Asked(OpenBill bill, MonetaryAmount setOff, MonetaryAmount asked, Optional<MonetaryAmount> interest,
            Optional<MonetaryAmount> compensation) {
        private static Asked of(Claim claim) {
            return new Asked(OpenBill.of(claim.owed()), claim.setOff().negate(), claim.asked(),
                    claim.late().map(Claim.Late::interest), claim.late().flatMap(Claim.Late::fixed));
        }
    }

    public ReminderAmounts {
        claims = List.copyOf(claims);
        disputed = List.copyOf(disputed);
    }

    static ReminderAmounts of(Reminder reminder) {
        return new ReminderAmounts(reminder.claims().claims().stream().map(Asked::of).toList(),
                OpenBill.of(reminder.claims().disputed()), reminder.claims().asked(), reminder.claims().onTop(),
                reminder.claims().total());
    }
}
