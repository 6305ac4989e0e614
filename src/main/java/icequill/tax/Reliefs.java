package icequill.tax;

import icequill.money.Percent;
import icequill.party.Certificate;
import icequill.work.ChargeClass;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How far certificates free a customer of a place's tax.
 *
 * @param byKind one of a kind that is not among them frees him of all of it
 */
public record Reliefs(Map<Certificate.Kind, Relief> byKind) {

    /**
     * What certificates of one kind free.
     *
     * @param classes that are freed; all where none is named
     * @param percent of what such a line costs that is freed
     */
    public record Relief(Set<ChargeClass> classes, Percent percent) {

        private static final Relief ALL = new Relief(Set.of(), Percent.HUNDRED);

        public Relief {
            classes = Set.copyOf(classes);
        }

        boolean isFor(ChargeClass chargeClass) {
            return classes.isEmpty() || classes.contains(chargeClass);
        }

        /** The part that is taxed all the same; empty where none is. */
        Optional<Percent> taxed() {
            return Optional.of(new Percent(Percent.HUNDRED.value().subtract(percent.value())))
                    .filter(rest -> !rest.isZero());
        }
    }

    public Reliefs {
        byKind = Map.copyOf(byKind);
    }

    /** @param reliefs empty where the place limits none */
    static Relief of(Optional<Reliefs> reliefs, Certificate certificate) {
        return reliefs.flatMap(known -> Optional.ofNullable(known.byKind().get(certificate.kind())))
                .orElse(Relief.ALL);
    }
}
