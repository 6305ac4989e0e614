package icequill.shop.steps;

import icequill.ledger.entries.LifeStep;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * To whom a site belonged before it was sold.
 *
 * @param steps a sale each, by rising day
 */
public record SiteOwners(String site, List<LifeStep> steps) {

    /** The kind of these steps. */
    public static final String KIND = "SITE";

    private static final String SOLD = "SOLD";

    public SiteOwners {
        steps = List.copyOf(steps);
    }

    /** Whose it was on a day, by id; empty where it was whose it is now. */
    public Optional<String> formerOn(LocalDate day) {
        return steps.stream().filter(step -> day.isBefore(step.dated())).findFirst()
                .flatMap(step -> step.text(LifeStep.CUSTOMER));
    }

    /** The first day of whoever owns it now, where that is known. */
    public Optional<LocalDate> soldLast() {
        return steps.isEmpty() ? Optional.empty() : Optional.of(steps.getLast().dated());
    }

    /**
     * That it is sold, as the step after the last.
     *
     * @param from the first day of the new owner
     * @param former owner, by id
     */
    public LifeStep next(LocalDate from, String former) {
        return new LifeStep(KIND, site, steps.size() + 1, SOLD, from, Optional.of(site),
                Map.of(LifeStep.CUSTOMER, former), Map.of());
    }
}
