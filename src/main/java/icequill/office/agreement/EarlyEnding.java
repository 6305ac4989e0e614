package icequill.office.agreement;

import icequill.answer.agreement.AgreementEnding;
import icequill.ledger.Transaction;
import icequill.life.agreement.AgreementEvent.Notice;
import icequill.life.agreement.AgreementState;
import icequill.office.billing.StandingInvoices;
import icequill.plans.EarlyEnd;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import icequill.request.AgreementRequest.Ended;
import icequill.shop.ShopBook;
import java.time.LocalDate;
import java.util.Map;

/**
 * Ends an agreement by notice: the step, and the credit notes of what goes back.
 *
 * @param book all of whose work is that of the transaction
 * @param today by which visits are still to come, and on which credit notes are dated
 * @param sentences for whoever asks
 */
record EarlyEnding(ShopBook book, Transaction open, LocalDate today, Sentences sentences) {

    Validated<AgreementEnding> of(HeldAgreement held, NoticeWish wish) {
        Notice notice = new Notice(wish.received(),
                wish.lastDay().orElseGet(() -> held.terms().earliestEnd(wish.received())), wish.by(), wish.way(),
                wish.who(), wish.words());
        return AgreementState.step(held.steps().state(), notice, held.terms()).then(after -> {
            EarlyEnd end = new EarlyEnd(held.hand(), notice.lastDay(), held.shop().earning(), held.doneDays(), today);
            Ended ended = end.ended();
            Map<Integer, String> billed = StandingInvoices.byPayment(open, held.request().number());
            open.lifeSteps().add(held.steps().next(notice, held.entry().site(), ended));
            EndTelling telling = new EndTelling(held, end, sentences);
            return new OwedCredits(book, held, today, billed)
                    .of(ended.credited(), "agreed.credit-reason", ended.lastDay())
                    .map(credits -> new AgreementEnding(held.request().number(),
                            wish.by(), wish.received(), notice.lastDay(), telling.back(), credits,
                            telling.unbilled(billed, false), telling.unbilled(billed, true), wish.isTrial()));
        });
    }
}
