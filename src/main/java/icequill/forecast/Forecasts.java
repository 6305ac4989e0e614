package icequill.forecast;

import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.StopPolicy;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Forecasts that were made already, so that each is worked out once. Safe for use by many threads. */
public final class Forecasts {

    private final Map<Asked, Forecast> known = new ConcurrentHashMap<>();

    private record Asked(List<MachineRisk> machines, MaintenancePolicy choice, StopPolicy policy, double months,
            PriceTerms terms) {}

    /** As {@link Forecast#of(List, Choice, StopPolicy, double, PriceTerms)}. */
    public Forecast of(List<MachineRisk> machines, MaintenancePolicy choice, StopPolicy policy, double months,
            PriceTerms terms) {
        return known.computeIfAbsent(new Asked(List.copyOf(machines), choice, policy, months, terms),
                asked -> Forecast.of(asked.machines(), asked.choice(), asked.policy(), asked.months(),
                        asked.terms()));
    }
}
