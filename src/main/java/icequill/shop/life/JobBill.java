package icequill.shop.life;

import icequill.document.CreditNote;
import icequill.document.StageInvoice;
import icequill.ledger.Reading;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.papers.IssuedPaper;
import java.util.List;
import javax.money.MonetaryAmount;

/**
 * An invoice of a part of a job.
 *
 * @param credits what was given back of it
 */
public record JobBill(IssuedPaper issued, StageInvoice paper, List<CreditNote> credits) {

    public JobBill {
        credits = List.copyOf(credits);
    }

    /** Whether it was not given back in whole. */
    public boolean isStanding() {
        return open().isPositive();
    }

    private MonetaryAmount open() {
        return credits.stream().map(note -> note.totals().gross()).reduce(paper.totals().gross(),
                MonetaryAmount::subtract);
    }

    /** Whether all that stands of it came in. */
    public boolean isPaid(Reading book) {
        return !book.accounts().paymentsOf(issued.number()).stream().filter(payment -> !payment.isBack())
                .flatMap(payment -> payment.shares().stream())
                .filter(share -> share.bill().equals(issued.number())).map(PaymentEntry.Share::amount)
                .reduce(open(), MonetaryAmount::subtract).isPositive();
    }
}
