package icequill.work;

import icequill.problem.Place;
import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * The visit that found what a repair mends, so that what it charged is taken off the repair.
 *
 * @param visit by its id
 * @param charged what is taken off; empty until it is known
 * @param place where it is named
 */
public record Diagnosis(String visit, Optional<Charged> charged, Place place) {

    /**
     * What the diagnosis charged.
     *
     * @param amount as its prices were shown, positive
     */
    public record Charged(LocalDate day, MonetaryAmount amount) {}

    Diagnosis as(Charged known) {
        return new Diagnosis(visit, Optional.of(known), place);
    }
}
