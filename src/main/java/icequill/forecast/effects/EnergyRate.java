package icequill.forecast.effects;

import icequill.explain.Figure;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What a clean machine takes to make ice, in kWh for 100 lb.
 *
 * @param limit the law it was taken from; empty for a nameplate
 */
public record EnergyRate(SourcedValue kilowattHours, Optional<EnergyLimit> limit) {

    /**
     * No machine makes ice from less: one without losses that freezes at 15 F and gives its heat off at 105 F takes 1.01 kWh
     * for 100 lb of water of 70 F.
     */
    private static final BigDecimal LEAST = BigDecimal.ONE;
    /** More than twice what the law allowed the smallest machines of 2010. */
    private static final BigDecimal MOST = new BigDecimal("40");

    public static EnergyRate ofLimit(EnergyLimit limit, BigDecimal harvest) {
        return new EnergyRate(new SourcedValue(limit.energy().at(harvest, "kWh"), limit.mark()), Optional.of(limit));
    }

    /**
     * From the nameplate.
     *
     * @param kilowattHours for 100 lb
     * @return a problem where no machine can be so good, or so bad
     */
    public static Validated<EnergyRate> ofNameplate(BigDecimal kilowattHours, Place place) {
        return kilowattHours.compareTo(LEAST) < 0 || kilowattHours.compareTo(MOST) > 0
                ? Validated.invalid(new Problem(Code.OUT_OF_RANGE, place,
                        "a machine that takes " + kilowattHours.toPlainString() + " kWh for 100 lb of ice",
                        "from " + LEAST.toPlainString() + ", which no machine reaches, to " + MOST.toPlainString()
                                + "; kWh for 100 lb, not for a day or for one pound"))
                : Validated.valid(new EnergyRate(
                        new SourcedValue(Figure.term(kilowattHours, "kWh"), Provenance.OWN), Optional.empty()));
    }
}
