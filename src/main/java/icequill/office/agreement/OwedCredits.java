package icequill.office.agreement;

import icequill.answer.BookedPaper;
import icequill.answer.ChangeCredit;
import icequill.money.Amounts;
import icequill.office.billing.Booking;
import icequill.office.billing.CreditOffice;
import icequill.office.billing.CreditOptions;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import icequill.request.CreditPart;
import icequill.shop.FormName;
import icequill.shop.ShopBook;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The credit notes of what an agreement gives back of its payments, by the change or the end that the book knows already.
 *
 * @param book all of whose work is that of the transaction
 * @param today the day that they bear
 * @param billed the invoices that stand, by the numbers of the payments
 */
record OwedCredits(ShopBook book, HeldAgreement held, LocalDate today, Map<Integer, String> billed) {

    /**
     * Issues them.
     *
     * @param payments of which something goes back, by number; those that are not billed are left out
     * @param reason the key of its words in the language of the customer, with the number of the agreement and a day
     */
    Validated<List<BookedPaper>> of(Set<Integer> payments, String reason, LocalDate day) {
        Problems problems = new Problems();
        List<BookedPaper> issued = new ArrayList<>();
        Sentences customer = Sentences.of(held.hand().language(Optional.empty()),
                held.hand().first().setting().shop().address().country());
        String why = customer.word(reason, held.request().number(), customer.formats().day(day));
        billed.forEach((payment, invoice) -> {
            if (payments.contains(payment)) {
                problems.take(credit(invoice, why)).ifPresent(issued::addAll);
            }
        });
        return problems.or(() -> issued);
    }

    /** One for each site that has a part of it, since each is taxed by its own place. */
    private Validated<List<BookedPaper>> credit(String invoice, String why) {
        CreditOffice office = CreditOffice.of(book);
        return office.byChanges(invoice, new FormName.InBook(held.entry().id()), today).then(change -> {
            Problems problems = new Problems();
            List<BookedPaper> issued = new ArrayList<>();
            for (ChangeCredit.OfLine line : change.lines()) {
                if (line.amount().isPositive()) {
                    problems.take(office.credit(invoice, new CreditOptions(List.of(line.line()),
                            new CreditPart.OfAmount(Amounts.number(line.amount())), why, today,
                            Optional.empty(), Booking.USUAL))).ifPresent(issued::addAll);
                }
            }
            return problems.or(() -> issued);
        });
    }
}
