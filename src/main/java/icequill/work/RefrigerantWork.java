package icequill.work;

import icequill.money.Exact;
import icequill.problem.Check;
import icequill.problem.Place;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What was done with the refrigerant of one machine on a visit. Amounts are weights, exact, all in the one unit.
 *
 * @param kind as a nameplate has it; empty for the machine's
 * @param unit ounces or pounds
 * @param charge what the machine holds when it is full; empty for what is on record of it
 * @param technician who did it, by name
 * @param leak where it was
 * @param repair how it was mended
 */
public record RefrigerantWork(Optional<String> kind, Unit unit, Optional<BigDecimal> charge, Optional<Moved> added,
        Optional<Moved> recovered, Purpose purpose, Optional<String> technician, Optional<String> leak,
        Optional<String> repair, Optional<LeakTest> test, Place place) {

    /** So many ounces are a pound. */
    private static final BigDecimal OUNCES = BigDecimal.valueOf(16);

    /** Why it was done. */
    public enum Purpose {
        /** The machine goes on with what it holds; whatever was missing had leaked. */
        SERVICE,
        /** A new machine, or another refrigerant in place of the old: what is put in had not leaked. */
        FIRST_CHARGE,
        /** The machine is done with. */
        DISPOSAL
    }

    /**
     * What went into the machine or came out of it.
     *
     * @param amount above zero
     * @param cylinder as it is marked
     */
    public record Moved(BigDecimal amount, Optional<String> cylinder) {}

    /**
     * Whether a repair holds.
     *
     * @param how it was tested
     */
    public record LeakTest(When when, boolean tight, Optional<String> how) {

        /** The two that the rules on leaks know. */
        public enum When {
            /** Before the refrigerant is back, or at once. */
            INITIAL,
            /** After the machine ran again as it should. */
            FOLLOW_UP
        }
    }

    public RefrigerantWork {
        Check.that(unit == Unit.OUNCE || unit == Unit.POUND, "no weight of refrigerant: " + unit);
    }

    /** An amount of it in ounces. */
    public BigDecimal ounces(BigDecimal amount) {
        return Exact.normal(unit == Unit.POUND ? amount.multiply(OUNCES) : amount);
    }

    /** The same of pounds. */
    public static BigDecimal ouncesOf(BigDecimal pounds) {
        return Exact.normal(pounds.multiply(OUNCES));
    }

    /** What went in, in ounces; zero where nothing did. */
    public BigDecimal addedOunces() {
        return added.map(moved -> ounces(moved.amount())).orElse(BigDecimal.ZERO);
    }

    /** What came out, in ounces; zero where nothing did. */
    public BigDecimal recoveredOunces() {
        return recovered.map(moved -> ounces(moved.amount())).orElse(BigDecimal.ZERO);
    }

    /** What the machine holds when it is full, in ounces. */
    public Optional<BigDecimal> chargeOunces(Optional<BigDecimal> onRecord) {
        return charge.map(this::ounces).or(() -> onRecord);
    }
}
