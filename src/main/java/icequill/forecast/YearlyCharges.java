package icequill.forecast;

import icequill.forecast.charges.ChargePart;
import icequill.money.Rounding;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What charges come to in the years of a horizon. Where years count differently, a charge of each is an amount of its own, with the
 * year's part of the calls expected.
 */
final class YearlyCharges {

    private static final double YEAR = 12;

    private final PriceTerms terms;
    private final double months;
    /** The part of each cause's calls that falls into each year; one year where all count alike. */
    private final Map<Cause, double[]> parts;

    private YearlyCharges(PriceTerms terms, double months, Map<Cause, double[]> parts) {
        this.terms = terms;
        this.months = months;
        this.parts = parts;
    }

    /**
     * The years of a horizon.
     *
     * @param expected calls of each cause up to a month, or something in proportion to them
     */
    static YearlyCharges of(PriceTerms terms, double months, Map<Cause, DoubleUnaryOperator> expected) {
        int years = terms.isNone() ? 1 : (int) Math.ceil(months / YEAR);
        Map<Cause, double[]> parts = new EnumMap<>(Cause.class);
        expected.forEach((cause, until) -> parts.put(cause, parts(years, months, until)));
        return new YearlyCharges(terms, months, parts);
    }

    private static double[] parts(int years, double months, DoubleUnaryOperator until) {
        double[] parts = new double[years];
        double all = years == 1 ? 0 : until.applyAsDouble(months);
        double before = 0;
        for (int year = 0; year < years - 1; year++) {
            double expected = all == 0 ? 0 : until.applyAsDouble((year + 1) * YEAR) / all;
            parts[year] = expected - before;
            before = expected;
        }
        parts[years - 1] = 1 - before;
        return parts;
    }

    List<ChargePart.Amount> amounts(Cause cause, List<CallKind> kinds) {
        double[] years = Objects.requireNonNull(parts.get(cause));
        List<ChargePart.Amount> amounts = new ArrayList<>();
        for (CallKind kind : kinds) {
            for (int year = 0; year < years.length; year++) {
                amounts.add(new ChargePart.Amount(kind.share() * years[year],
                        Rounding.LATER_YEAR.wholeMinor(terms.factor(year).multiply(kind.charge()))));
            }
        }
        return amounts;
    }

    /** What a choice is paid over all years, the last one in proportion to its months, rounded once. */
    long planned(MaintenancePolicy choice) {
        BigFraction sum = BigFraction.ZERO;
        for (int year = 0; year < months / YEAR; year++) {
            BigFraction part = BigFraction.from(Math.min(1, months / YEAR - year));
            sum = sum.add(terms.factor(year).multiply(part).multiply(choice.plannedIn(year)));
        }
        return Rounding.PLANNED.wholeMinor(sum);
    }
}
