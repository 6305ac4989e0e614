package icequill.work;

import icequill.problem.Place;
import java.math.BigDecimal;
import java.util.Optional;

/** A charge of a visit besides the service call and labor. */
public sealed interface VisitLine {

    Outcome outcome();

    /** The machine it was for, by id; empty when for the site as a whole. */
    Optional<String> machine();

    Place place();

    /** A material that was used, or would have been, in the unit of its rate. */
    record MaterialUsed(String material, BigDecimal quantity, Optional<String> machine, Outcome outcome,
            Optional<OneOff> less, Place place) implements VisitLine {

        public MaterialUsed(String material, BigDecimal quantity, Optional<String> machine, Outcome outcome,
                Place place) {
            this(material, quantity, machine, outcome, Optional.empty(), place);
        }
    }

    /**
     * A price modifier that applied.
     *
     * @param quantity how many times, or how many minutes, as its rate is counted
     */
    record ModifierApplied(String modifier, BigDecimal quantity, Optional<String> machine, Outcome outcome,
            Optional<OneOff> less, Place place) implements VisitLine {

        public ModifierApplied(String modifier, BigDecimal quantity, Optional<String> machine, Outcome outcome,
                Place place) {
            this(modifier, quantity, machine, outcome, Optional.empty(), place);
        }
    }

    /**
     * Something that no rates know, in the office's own words: a part bought for this once, freight, a permit, a rented lift.
     *
     * @param text as it is printed, in every language
     * @param quantity above zero
     * @param back why it is taken off the bill; empty where it is charged
     * @param block what is sold ahead with it; empty where nothing is
     */
    record Own(String text, ChargeClass chargeClass, Quantity quantity, OwnPrice price, Optional<TakenBack> back,
            Optional<Block> block, Optional<String> machine, Outcome outcome, Optional<OneOff> less, Place place)
            implements
            VisitLine {

        /** Whether it stays with the customer, as a part does. */
        public boolean isPutIn() {
            return chargeClass.isFurnished() && back.isEmpty() && outcome.isDone();
        }
    }
}
