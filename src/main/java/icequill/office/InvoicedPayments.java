package icequill.office;

import icequill.agreement.Invoiced;
import icequill.document.AgreementRequest;
import icequill.problem.Checked;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.Map;
import javax.money.MonetaryAmount;

/** Which payments of an agreement the shop's book has invoiced. */
record InvoicedPayments(ShopBook book) {

    static InvoicedPayments in(Path folder) {
        return new InvoicedPayments(ShopBook.of(folder, Clock.systemUTC()));
    }

    /** Asked of the book only where a change makes it matter. */
    Checked<Invoiced> of(AgreementRequest agreement) {
        return agreement.changes().isEmpty() || !book.exists()
                ? Checked.sound(Invoiced.NOTHING)
                : book.read(open -> {
                    Map<Integer, MonetaryAmount> nets = new HashMap<>();
                    Billed.payments(open, agreement.number())
                            .forEach(invoice -> nets.put(invoice.payment(), invoice.totals().net()));
                    return Checked.sound(new Invoiced(nets));
                });
    }
}
