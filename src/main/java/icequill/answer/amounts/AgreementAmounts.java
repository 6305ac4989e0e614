package icequill.answer.amounts;

import icequill.document.ServiceAgreement;
import java.time.LocalDate;
import java.util.List;
import javax.money.MonetaryAmount;

/** Of a service agreement. */
public record AgreementAmounts(MonetaryAmount yearPrice, MonetaryAmount termPrice, List<DueAmount> installments,
        List<Change> changes, List<CallPrice> calls) implements PaperAmounts {

    /**
     * A change of its machines in mid-term.
     *
     * @param yearDifference of a whole year
     * @param price what the change comes to until the end of the term
     */
    public record Change(LocalDate from, MonetaryAmount yearDifference, MonetaryAmount price) {}

    public AgreementAmounts {
        installments = List.copyOf(installments);
        changes = List.copyOf(changes);
        calls = List.copyOf(calls);
    }

    static AgreementAmounts of(ServiceAgreement agreement) {
        return new AgreementAmounts(agreement.yearPrice(), agreement.termPrice(), DueAmount.of(agreement.payments()),
                agreement.changes().stream().map(change -> new Change(change.price().from(), change.yearDifference(),
                        change.price().amount())).toList(),
                agreement.calls().stream().map(call -> CallPrice.of(call, agreement.language())).toList());
    }
}
