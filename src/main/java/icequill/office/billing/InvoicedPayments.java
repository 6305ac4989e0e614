package icequill.office.billing;

import icequill.agreement.Invoiced;
import icequill.plans.AgreementState;
import icequill.problem.Validated;
import icequill.request.AgreementRequest;
import icequill.shop.ShopBook;
import java.util.Optional;

/** Which payments of an agreement the shop's book has invoiced. */
public record InvoicedPayments(ShopBook book) {

    /** Asked of the book only where a change makes it matter. */
    public Validated<Invoiced> of(AgreementRequest agreement) {
        return agreement.changes().isEmpty() || !book.exists()
                ? Validated.valid(Invoiced.NOTHING)
                : book.read(open -> Validated
                        .valid(StandingInvoices.nets(StandingInvoices.payments(open, agreement.number()))));
    }

    /** What the payments were worked out from; empty where no change makes it matter. */
    static Optional<Invoiced> known(AgreementState hand) {
        return Optional.of(hand.invoiced()).filter(invoiced -> !hand.request().changes().isEmpty());
    }
}
