package icequill.answer.agreement;

import icequill.agreement.Earning;
import icequill.answer.BookedPaper;
import icequill.life.agreement.NoticeBy;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What ending an agreement by notice comes to.
 *
 * @param received the day of the notice
 * @param back missing where nothing was paid ahead for its term
 * @param credits what was issued to give it back, or would be
 * @param unbilled payments by its last day that are still to be billed, by number
 * @param dropped payments after its last day, which are never billed, by number
 * @param tried whether nothing was stored
 */
public record AgreementEnding(String agreement, NoticeBy by, LocalDate received, LocalDate lastDay,
        Optional<Back> back, List<BookedPaper> credits, List<Integer> unbilled, List<Integer> dropped,
        boolean tried) {

    public AgreementEnding {
        credits = List.copyOf(credits);
        unbilled = List.copyOf(unbilled);
        dropped = List.copyOf(dropped);
    }

    /**
     * What is given back.
     *
     * @param earning how what was paid ahead is earned
     * @param amount before tax
     * @param how it was figured
     * @param why in words, for the customer
     */
    public record Back(Earning earning, MonetaryAmount amount, String how, List<String> why) {
        public Back {
            why = List.copyOf(why);
        }
    }
}
