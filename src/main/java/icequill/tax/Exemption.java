package icequill.tax;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Certificate;
import icequill.party.Customer;
import icequill.work.ChargeClass;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether a customer is free of sales tax in a state on a day.
 *
 * @param held certificates that hold, in the customer's order; none means tax is due
 * @param refused why none could be used, where none holds
 */
record Exemption(List<Held> held, Optional<Phrase> refused) {

    private static final Exemption NONE = new Exemption(List.of(), Optional.empty());

    /** A certificate that holds, and how far it reaches. */
    record Held(Certificate certificate, Reliefs.Relief relief) {

        private Phrase remark() {
            return Phrase.of("remark.certificate-used", new Fact.Text(certificate.number()),
                    new Fact.Text(certificate.state()));
        }
    }

    Exemption {
        held = List.copyOf(held);
    }

    /** VAT knows no such certificates. */
    static Exemption of(Customer customer, TaxPlace place, LocalDate day) {
        if (place.regime() == TaxPlace.Regime.VAT) {
            return NONE;
        }
        List<Certificate> forState = customer.certificates().stream()
                .filter(certificate -> certificate.state().equals(place.state())).toList();
        List<Held> holding = forState.stream().filter(certificate -> certificate.holdsOn(day))
                .map(certificate -> new Held(certificate, Reliefs.of(place.reliefs(), certificate))).toList();
        if (!holding.isEmpty()) {
            return new Exemption(holding, Optional.empty());
        }
        Optional<Phrase> refused = forState.stream().min(nearestTo(day)).map(certificate -> refused(certificate, day));
        return refused.isPresent() || !customer.claimsExemption()
                ? new Exemption(List.of(), refused)
                : new Exemption(List.of(),
                        Optional.of(Phrase.of("remark.certificate-missing", new Fact.Text(place.state()))));
    }

    /** The one that frees most of a class, the first of equals; where none reaches it, the first of all. */
    Optional<Held> best(ChargeClass chargeClass) {
        return held.stream().filter(one -> one.relief().isFor(chargeClass))
                .min(Comparator.comparing((Held one) -> one.relief().percent().value()).reversed())
                .or(() -> held.stream().findFirst());
    }

    /** What to tell the customer: which certificates reach what was done, or why none could be used. */
    List<Phrase> remarks(List<ChargeClass> classes) {
        return held.isEmpty()
                ? refused.stream().toList()
                : held.stream()
                        .filter(one -> classes.stream().map(this::best).anyMatch(Optional.of(one)::equals))
                        .map(Held::remark).distinct().toList();
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
