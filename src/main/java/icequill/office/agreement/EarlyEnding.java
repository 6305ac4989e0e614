package icequill.office.agreement;

import icequill.agreement.Installment;
import icequill.agreement.PaymentChange.GivenBack;
import icequill.answer.BookedPaper;
import icequill.answer.ChangeCredit;
import icequill.answer.agreement.AgreementEnding;
import icequill.answer.agreement.AgreementEnding.Back;
import icequill.ledger.Transaction;
import icequill.life.agreement.AgreementEvent.Notice;
import icequill.life.agreement.AgreementState;
import icequill.money.Amounts;
import icequill.office.billing.Booking;
import icequill.office.billing.CreditOffice;
import icequill.office.billing.CreditOptions;
import icequill.office.billing.StandingInvoices;
import icequill.plans.EarlyEnd;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import icequill.request.AgreementRequest.Ended;
import icequill.request.CreditPart;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

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
            return credits(held, ended, billed).map(credits -> new AgreementEnding(held.request().number(),
                    wish.by(), wish.received(), notice.lastDay(), back(end, held), credits,
                    left(held, billed, notice.lastDay(), false), left(held, billed, notice.lastDay(), true),
                    wish.isTrial()));
        });
    }

    private Optional<Back> back(EarlyEnd end, HeldAgreement held) {
        return end.refund().map(refund -> new Back(held.shop().earning(), refund.amount(),
                sentences.formula(refund.how().figure()),
                refund.how().reasons().stream().map(sentences::say).toList()));
    }

    /** The payments of the term that are not billed, by number: those that fall due by the last day, or those after it. */
    private static List<Integer> left(HeldAgreement held, Map<Integer, String> billed, LocalDate last,
            boolean areAfter) {
        return held.hand().payments().stream().filter(held.hand()::isPayable)
                .filter(payment -> !billed.containsKey(payment.number()) && payment.due().isAfter(last) == areAfter)
                .map(Installment::number).toList();
    }

    private Validated<List<BookedPaper>> credits(HeldAgreement held, Ended ended, Map<Integer, String> billed) {
        Problems problems = new Problems();
        List<BookedPaper> issued = new ArrayList<>();
        Set<Integer> credited = ended.givenBack().values().stream().flatMap(back -> back.credited().stream())
                .map(GivenBack::payment)
                .collect(Collectors.toSet());
        billed.forEach((payment, invoice) -> {
            if (credited.contains(payment)) {
                problems.take(credit(held, ended, invoice)).ifPresent(issued::addAll);
            }
        });
        return problems.or(() -> issued);
    }

    /** One for each site that has a part of it, since each is taxed by its own place. */
    private Validated<List<BookedPaper>> credit(HeldAgreement held, Ended ended, String invoice) {
        CreditOffice office = CreditOffice.of(book);
        return office.byChanges(invoice, new FormName.InBook(held.entry().id()), today).then(change -> {
            Problems problems = new Problems();
            List<BookedPaper> issued = new ArrayList<>();
            for (ChangeCredit.OfLine line : change.lines()) {
                if (line.amount().isPositive()) {
                    problems.take(office.credit(invoice, new CreditOptions(List.of(line.line()),
                            new CreditPart.OfAmount(Amounts.number(line.amount())), reason(held, ended), today,
                            Optional.empty(), Booking.USUAL))).ifPresent(issued::addAll);
                }
            }
            return problems.or(() -> issued);
        });
    }

    /** In the language of the customer. */
    private String reason(HeldAgreement held, Ended ended) {
        Sentences customer = Sentences.of(held.hand().language(Optional.empty()),
                held.hand().first().setting().shop().address().country());
        return customer.word("agreed.credit-reason", held.request().number(),
                customer.formats().day(ended.lastDay()));
    }
}
