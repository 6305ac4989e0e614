package icequill.party;

import icequill.problem.Place;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * Something about a site that makes every planned visit dearer, such as stairs or a machine on the roof.
 *
 * @param modifier by id, as the rates name it
 * @param amount how many times, or how many minutes, as its rate is counted
 * @param machine by id, where it is so only when this machine is looked after
 */
public record Circumstance(String modifier, BigDecimal amount, Optional<String> machine, Each each, Place place) {

    /** What it is counted by. */
    public enum Each {
        VISIT, MACHINE,
        /** Every machine of the visit but the first. */
        FURTHER_MACHINE
    }

    /** How much of it a visit to some machines has; zero for none. */
    public BigDecimal on(List<Machine> machines) {
        if (machine.isPresent() && machines.stream().map(Machine::id).noneMatch(machine.get()::equals)) {
            return BigDecimal.ZERO;
        }
        return amount.multiply(BigDecimal.valueOf(switch (each) {
        case VISIT -> 1L;
        case MACHINE -> machines.size();
        case FURTHER_MACHINE -> machines.size() - 1L;
        }));
    }
}
