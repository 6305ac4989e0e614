package icequill.answer.amounts;

import icequill.document.ServiceAgreement;
import icequill.party.Language;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Of a service agreement.
 *
 * @param calls beside the plan, at its site or the first of several
 * @param sites of one over several; empty else
 */
public record AgreementAmounts(MonetaryAmount yearPrice, MonetaryAmount termPrice, List<DueAmount> installments,
        List<Change> changes, List<CallPrice> calls, List<AtSite> sites) implements PaperAmounts {

    /**
     * A change of its machines in mid-term.
     *
     * @param yearDifference of a whole year
     * @param price what the change comes to until the end of the term
     */
    public record Change(LocalDate from, MonetaryAmount yearDifference, MonetaryAmount price) {}

    /**
     * One of several sites.
     *
     * @param yearPrice before tax; of a site that comes in later, from then on
     * @param from the day on which it comes in, in mid-term; missing where it is in from the beginning
     * @param until its last day, in mid-term; missing where it stays
     */
    public record AtSite(String site, Optional<String> store, MonetaryAmount yearPrice, Optional<LocalDate> from,
            Optional<LocalDate> until, List<CallPrice> calls) {
        public AtSite {
            calls = List.copyOf(calls);
        }
    }

    public AgreementAmounts {
        sites = List.copyOf(sites);
        installments = List.copyOf(installments);
        changes = List.copyOf(changes);
        calls = List.copyOf(calls);
    }

    static AgreementAmounts of(ServiceAgreement agreement) {
        return new AgreementAmounts(agreement.yearPrice(), agreement.termPrice(), DueAmount.of(agreement.payments()),
                agreement.sites().stream().flatMap(site -> site.changes().stream())
                        .map(change -> new Change(change.price().from(), change.yearDifference(),
                                change.price().amount()))
                        .toList(),
                agreement.sites().getFirst().calls().stream().map(call -> CallPrice.of(call, agreement.language()))
                        .toList(),
                agreement.isOverSeveralSites()
                        ? agreement.sites().stream().map(site -> at(site, agreement.language())).toList()
                        : List.of());
    }

    private static AtSite at(ServiceAgreement.CareAt site, Language language) {
        return new AtSite(site.where().site(), site.where().storeNumber(), site.yearPrice(), site.from(), site.until(),
                site.calls().stream().map(call -> CallPrice.of(call, language)).toList());
    }
}
