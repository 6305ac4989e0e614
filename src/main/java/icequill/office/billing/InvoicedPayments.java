package icequill.office.billing;

import icequill.agreement.Invoiced;
import icequill.problem.Validated;
import icequill.request.AgreementRequest;
import icequill.shop.ShopBook;

/** Which payments of an agreement the shop's book has invoiced. */
public record InvoicedPayments(ShopBook book) {

    /** At one of an agreement's sites; asked of the book only where a change, or an early end, makes it matter. */
    public Validated<Invoiced> of(AgreementRequest agreement, String site) {
        return (agreement.changes().isEmpty() && agreement.part().isEmpty() && agreement.ended().isEmpty())
                || !book.exists()
                        ? Validated.valid(Invoiced.NOTHING)
                        : whatever(agreement, site);
    }

    /** The same where it matters in any case; there must be a book. */
    public Validated<Invoiced> whatever(AgreementRequest agreement, String site) {
        return book.read(open -> Validated.valid(StandingInvoices.nets(open,
                StandingInvoices.payments(open, agreement.number()), agreement, site)));
    }
}
