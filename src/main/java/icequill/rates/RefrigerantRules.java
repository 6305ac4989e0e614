package icequill.rates;

import icequill.money.Exact;
import icequill.party.Period;
import icequill.party.Wording;
import icequill.work.Flammability;
import icequill.work.RefrigerantWork;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a shop has on record of refrigerants and of the law about them. Data, not advice.
 *
 * @param category in which its law puts the machines of the shop's customers
 * @param cylinders what some held on a day
 */
public record RefrigerantRules(List<Kind> kinds, List<LeakRule> leaks, Optional<DisposalRule> disposal,
        Category category, List<Cylinder> cylinders) {

    /** Nothing is on record. */
    public static final RefrigerantRules NONE = new RefrigerantRules(List.of(), List.of(), Optional.empty(),
            Category.COMMERCIAL_REFRIGERATION, List.of());

    /** What an appliance is for, as the law divides them. */
    public enum Category {
        INDUSTRIAL_PROCESS, COMMERCIAL_REFRIGERATION, COMFORT_COOLING
    }

    /** Where a value comes from. */
    public enum Mark {
        /** The law's text was read. */
        PUBLISHED,
        /** A page about the law was read. */
        SECONDARY, FROM_MEMORY
    }

    /**
     * A refrigerant.
     *
     * @param name as nameplates have it
     * @param ozoneDepleting whether it is, or has in it, a class I or class II substance
     * @param gwp its global warming potential over a hundred years
     * @param lowPressure whether machines with it are low-pressure appliances
     */
    public record Kind(String name, boolean ozoneDepleting, BigDecimal gwp, boolean lowPressure) {}

    /**
     * A rule about leaks.
     *
     * @param ozoneDepleting whether it is about refrigerants that are; otherwise about the others
     * @param gwpAbove the warming potential above which it holds; empty for any
     * @param pounds the full charge from which it holds
     * @param limits the leak rate above which something must be done, in percent of the full charge a year
     */
    public record LeakRule(String id, Wording name, Period period, boolean ozoneDepleting,
            Optional<BigDecimal> gwpAbove,
            BigDecimal pounds, Map<Category, BigDecimal> limits, Mark mark, String source) {

        public LeakRule {
            limits = Map.copyOf(limits);
        }

        /** Whether it is about a refrigerant on a day, whatever the charge. */
        public boolean isAbout(Kind kind, LocalDate day) {
            return period.contains(day) && kind.ozoneDepleting() == ozoneDepleting
                    && gwpAbove.filter(least -> kind.gwp().compareTo(least) <= 0).isEmpty();
        }

        /** The same with a machine's full charge. */
        public boolean asksFor(BigDecimal chargeOunces) {
            return chargeOunces.compareTo(RefrigerantWork.ouncesOf(pounds)) >= 0;
        }
    }

    /**
     * The charges of machines of which a record of their disposal must be kept.
     *
     * @param above in pounds
     * @param below in pounds
     */
    public record DisposalRule(Wording name, BigDecimal above, BigDecimal below, Mark mark, String source) {

        /** Whether a full charge is among them. */
        public boolean asksFor(BigDecimal chargeOunces) {
            return chargeOunces.compareTo(RefrigerantWork.ouncesOf(above)) > 0
                    && chargeOunces.compareTo(RefrigerantWork.ouncesOf(below)) < 0;
        }
    }

    /**
     * What a cylinder held.
     *
     * @param name as it is marked
     * @param on at the end of which day
     * @param ounces of refrigerant in it, its own weight apart
     */
    public record Cylinder(String name, String kind, LocalDate on, BigDecimal ounces) {

        public Cylinder {
            ounces = Exact.normal(ounces);
        }
    }

    public RefrigerantRules {
        kinds = List.copyOf(kinds);
        leaks = List.copyOf(leaks);
        cylinders = List.copyOf(cylinders);
    }

    /** A refrigerant by its name, however nameplates write it. */
    public Optional<Kind> kind(String name) {
        return kinds.stream().filter(kind -> isSame(kind.name(), name)).findFirst();
    }

    /** A cylinder by its mark. */
    public Optional<Cylinder> cylinder(String name) {
        return cylinders.stream().filter(cylinder -> cylinder.name().equals(name)).findFirst();
    }

    /** Whether two names are of one refrigerant. */
    public static boolean isSame(String one, String other) {
        return Flammability.number(one).equals(Flammability.number(other));
    }
}
