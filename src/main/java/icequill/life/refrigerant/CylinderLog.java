package icequill.life.refrigerant;

import icequill.rates.RefrigerantRules.Cylinder;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * What went out of a cylinder and into it. All weights are ounces.
 *
 * @param kind of what moved first
 * @param taken out of it, into machines
 * @param put into it, out of machines
 * @param balance what is in it by that, from the day on which somebody wrote down what it held; empty where nobody did
 */
public record CylinderLog(String cylinder, String kind, BigDecimal taken, BigDecimal put,
        Optional<BigDecimal> balance) {

    /**
     * Of one cylinder.
     *
     * @param moved all that ever moved with it
     * @param shown what of it is to be summed, at least one
     * @param held what it held on a day; empty where nobody wrote it down
     */
    static CylinderLog of(String cylinder, List<Handled> moved, List<Handled> shown, Optional<Cylinder> held) {
        return new CylinderLog(cylinder, shown.getFirst().kind(), taken(cylinder, shown), put(cylinder, shown),
                held.map(start -> {
                    List<Handled> since = moved.stream().filter(one -> one.day().isAfter(start.on())).toList();
                    return start.ounces().subtract(taken(cylinder, since)).add(put(cylinder, since));
                }));
    }

    /** Whether it is a visit's. */
    static boolean isOf(String cylinder, Handled handled) {
        return handled.from().filter(cylinder::equals).isPresent()
                || handled.into().filter(cylinder::equals).isPresent();
    }

    private static BigDecimal taken(String cylinder, Collection<Handled> moved) {
        return moved.stream().filter(one -> one.from().filter(cylinder::equals).isPresent()).map(Handled::added)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal put(String cylinder, Collection<Handled> moved) {
        return moved.stream().filter(one -> one.into().filter(cylinder::equals).isPresent()).map(Handled::recovered)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
