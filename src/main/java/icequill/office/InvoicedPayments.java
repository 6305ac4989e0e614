package icequill.office;

import icequill.agreement.Invoiced;
import icequill.document.AgreementRequest;
import icequill.problem.Checked;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

/** Which payments of an agreement the shop's book has invoiced. */
record InvoicedPayments(ShopBook book) {

    static InvoicedPayments in(Path folder) {
        return new InvoicedPayments(ShopBook.of(folder, Clock.systemUTC()));
    }

    /** Asked of the book only where a change makes it matter. */
    Checked<Invoiced> of(AgreementRequest agreement) {
        return agreement.changes().isEmpty() || !book.exists()
                ? Checked.sound(Invoiced.NOTHING)
                : book.read(open -> Checked.sound(Billed.nets(Billed.payments(open, agreement.number()))));
    }

    /** What the payments were worked out from; empty where no change makes it matter. */
    static Optional<Invoiced> known(AgreementInHand hand) {
        return Optional.of(hand.invoiced()).filter(invoiced -> !hand.request().changes().isEmpty());
    }
}
