package icequill.forecast.effects;

import icequill.party.Machine;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The limits of energy that the shop has on record. */
public record EnergyLimits(List<EnergyLimit> limits) {

    public EnergyLimits {
        limits = List.copyOf(limits);
    }

    /**
     * The limit for a class of machines.
     *
     * @param harvest lb in 24 hours
     * @return empty where none is on record: too old, too small, too large
     */
    public Optional<EnergyLimit> find(Machine.Make make, EnergyLimit.Build build, Machine.Cooling cooling,
            LocalDate made, BigDecimal harvest) {
        return limits.stream().filter(limit -> limit.holdsFor(make, build, cooling, made, harvest)).findFirst();
    }

    /**
     * The most that a machine may take, which is a stand-in for what it does take.
     *
     * @param made the day it was made, or else installed
     */
    public Optional<EnergyRate> rate(Machine machine, LocalDate made) {
        return find(machine.make(), EnergyLimit.Build.of(machine.form()), machine.cooling(), made,
                machine.harvestRate()).map(limit -> EnergyRate.ofLimit(limit, machine.harvestRate()));
    }
}
