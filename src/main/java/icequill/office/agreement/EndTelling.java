package icequill.office.agreement;

import icequill.agreement.Installment;
import icequill.answer.agreement.AgreementEnding.Back;
import icequill.plans.EarlyEnd;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Tells what an end of an agreement leaves, in the language of the reader.
 *
 * @param held as it was before
 */
record EndTelling(HeldAgreement held, EarlyEnd end, Sentences sentences) {

    /** Empty where nothing was paid ahead. */
    Optional<Back> back() {
        return end.refund().map(refund -> new Back(held.shop().earning(), refund.amount(),
                sentences.formula(refund.how().figure()),
                refund.how().reasons().stream().map(sentences::say).toList()));
    }

    /**
     * The payments of the term that are not billed, by number: those that fall due by the last day, or those after it.
     *
     * @param billed invoices by the number of their payment
     */
    List<Integer> unbilled(Map<Integer, String> billed, boolean areAfter) {
        return held.hand().payments().stream().filter(held.hand()::isPayable)
                .filter(payment -> !billed.containsKey(payment.number())
                        && payment.due().isAfter(end.lastDay()) == areAfter)
                .map(Installment::number).toList();
    }
}
