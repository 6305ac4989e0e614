package icequill.pricer;

import icequill.agreement.FlatPrices;
import icequill.agreement.Scope;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.rates.ClassDiscount;
import icequill.rates.DocumentDiscount;
import icequill.rates.Fee;
import icequill.rates.Grade;
import icequill.rates.Material;
import icequill.rates.Modifier;
import icequill.rates.Rates;
import icequill.rates.Surcharge;
import icequill.work.Attendance;
import icequill.work.OneOff;
import icequill.work.Outcome;
import icequill.work.Task;
import icequill.work.Visit;
import icequill.work.VisitLine;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A visit whose every name has been looked up: what the calculators work on. */
record ResolvedVisit(Visit visit, Site site, Rates rates, List<Worker> workers, List<Use> uses, List<Applied> modifiers,
        List<OwnWords> own, Optional<OwnWords> shipping, List<AtFlatPrice> flat, List<Fee> fees,
        List<Surcharge> surcharges, List<ClassDiscount> discounts,
        Optional<DocumentDiscount> documentDiscount) {

    /**
     * One person's time and prices.
     *
     * @param stays by their beginning; several of one who left and came back
     */
    record Worker(List<Attendance> stays, Grade grade) {
        Worker {
            stays = List.copyOf(stays);
        }
    }

    /**
     * A material used.
     *
     * @param dosedBy the task whose dose gave the quantity
     */
    record Use(Material material, BigDecimal quantity, Optional<Machine> machine, Outcome outcome,
            Optional<Task> dosedBy, Optional<OneOff> less) {

        boolean isDose() {
            return dosedBy.isPresent();
        }
    }

    /** A modifier that applied. */
    record Applied(Modifier modifier, BigDecimal quantity, Optional<Machine> machine, Outcome outcome,
            Optional<OneOff> less) {}

    /** A machine at which the work of a scope was done for a flat price. */
    record AtFlatPrice(Scope scope, FlatPrices.Row row, Machine machine, Outcome outcome) {}

    /** Whether cleaning labor and doses are not charged because flat prices stand for them. */
    boolean isFlat() {
        return visit.terms().flat().isPresent();
    }

    /** A line in one's own words. */
    record OwnWords(VisitLine.Own line, Optional<Machine> machine) {}

    /** The visit with an agreement's discounts on other work, of which and a rate sheet's the better holds, unless it names its own. */
    ResolvedVisit under(ClassDiscount agreed) {
        return visit.terms().classDiscount().isPresent()
                ? this
                : new ResolvedVisit(visit, site, rates, workers, uses, modifiers, own, shipping, flat, fees, surcharges,
                        Stream.concat(discounts.stream(), Stream.of(agreed)).toList(), documentDiscount);
    }

    /** The modifier because of which labor is not charged. */
    Optional<Applied> insteadOfLabor() {
        return modifiers.stream()
                .filter(applied -> applied.modifier().insteadOfLabor() && applied.outcome().isCharged())
                .findFirst();
    }
}
