package icequill.tax;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Certificate;
import icequill.party.Customer;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether a customer is free of sales tax in a state on a day.
 *
 * @param certificate the one that holds; empty means tax is due
 * @param remark what to tell the customer: which certificate was used, or why none could be
 */
record Exemption(Optional<Certificate> certificate, Optional<Phrase> remark) {

    private static final Exemption NONE = new Exemption(Optional.empty(), Optional.empty());

    /** VAT knows no such certificates. */
    static Exemption of(Customer customer, TaxPlace place, LocalDate day) {
        if (place.regime() == TaxPlace.Regime.VAT) {
            return NONE;
        }
        List<Certificate> forState = customer.certificates().stream()
                .filter(certificate -> certificate.state().equals(place.state())).toList();
        Optional<Certificate> holding = forState.stream().filter(certificate -> certificate.holdsOn(day)).findFirst();
        if (holding.isPresent()) {
            return new Exemption(holding, holding.map(held -> Phrase.of("remark.certificate-used",
                    new Fact.Text(held.number()), new Fact.Text(held.state()))));
        }
        Optional<Phrase> refused = forState.stream().min(nearestTo(day)).map(certificate -> refused(certificate, day));
        return refused.isPresent() || !customer.claimsExemption()
                ? new Exemption(Optional.empty(), refused)
                : new Exemption(Optional.empty(),
                        Optional.of(Phrase.of("remark.certificate-missing", new Fact.Text(place.state()))));
    }

    /** The one that expired last comes first; only where none was signed yet, the one signed next. */
    private static Comparator<Certificate> nearestTo(LocalDate day) {
        return Comparator.comparing((Certificate certificate) -> !certificate.hasExpiredBy(day))
                .thenComparing(certificate -> certificate.expires().orElse(LocalDate.MAX), Comparator.reverseOrder())
                .thenComparing(Certificate::signed);
    }

    private static Phrase refused(Certificate certificate, LocalDate day) {
        Fact number = new Fact.Text(certificate.number());
        return certificate.hasExpiredBy(day)
                ? Phrase.of("remark.certificate-expired", number, new Fact.Day(certificate.expires().orElseThrow()))
                : Phrase.of("remark.certificate-not-yet", number, new Fact.Day(certificate.signed()));
    }
}
