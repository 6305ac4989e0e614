package icequill.plans;

import icequill.forecast.Cause;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.SiteVisits;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.Pace;
import icequill.party.Machine;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What is known of the care of one side of a machine, and so of its dirt on any day.
 *
 * @param cleanings by their day
 * @param begins the first day that is looked at, unless it was cleaned before; until it is cleaned, that is the day asked for
 * @param unknown months of dirt that are taken on that day; a machine that is newer is no dirtier than its age
 * @param restores the part of the dirt's age that a planned cleaning takes away
 * @param pace how its months count
 */
public record SideCare(List<Cleaning> cleanings, LocalDate begins, Optional<LocalDate> installed, double unknown,
        double restores, Pace pace) {

    private static final double HUNDRED = 100;
    private static final double YEAR = 12;

    /** A cleaning; a call's leaves no dirt. */
    public record Cleaning(LocalDate day, boolean isCall) {

        /** One of the shop's own visits. */
        public static Cleaning of(SiteVisits.Cleaned cleaned) {
            return new Cleaning(cleaned.day(), cleaned.isCall());
        }
    }

    public SideCare {
        cleanings = List.copyOf(cleanings);
    }

    /** Of a machine whose months count so. */
    public static SideCare of(ForecastRates rates, Pace pace, Machine machine, Cause side, LocalDate begins,
            List<Cleaning> cleanings) {
        return new SideCare(cleanings, begins, machine.installed(),
                rates.unknownMonths().doubleValue() * pace.aYear() / YEAR,
                (side == Cause.CONDENSER ? rates.brushingRestores() : rates.cleaningRestores()).value().doubleValue()
                        / HUNDRED,
                pace);
    }

    /** The same with so many months taken where nobody knows. */
    public SideCare taking(double months) {
        return new SideCare(cleanings, begins, installed, months, restores, pace);
    }

    /** Months of dirt on a day, before it is cleaned on that day. */
    public double before(LocalDate day) {
        return age(day, cleaning -> cleaning.isBefore(day));
    }

    /** Months of dirt on a day, after it was cleaned on that day. */
    public double after(LocalDate day) {
        return age(day, cleaning -> !cleaning.isAfter(day));
    }

    /** Months since the last cleaning up to a day, or as many as are taken. */
    public double sinceLast(LocalDate day) {
        return new SideCare(cleanings, begins, installed, unknown, 1, pace).after(day);
    }

    private double age(LocalDate day, Predicate<LocalDate> done) {
        List<Cleaning> counted = cleanings.stream().filter(cleaning -> done.test(cleaning.day())).toList();
        LocalDate since = counted.isEmpty()
                ? day
                : counted.getFirst().day().isBefore(begins) ? counted.getFirst().day() : begins;
        double age = unknownOn(since);
        for (Cleaning cleaning : counted) {
            age = (cleaning.isCall() ? 0 : 1 - restores) * (age + pace.between(since, cleaning.day()));
            since = cleaning.day();
        }
        return age + pace.between(since, day);
    }

    private double unknownOn(LocalDate day) {
        return installed.map(date -> date.isAfter(day) ? 0 : Math.min(unknown, pace.between(date, day)))
                .orElse(unknown);
    }

    /** The cleanings of some days that nobody called for; what calls clean is in the forecast. */
    public CleaningSchedule care(LocalDate from, LocalDate until) {
        List<Double> at = cleanings.stream().filter(cleaning -> !cleaning.isCall()).map(Cleaning::day)
                .filter(day -> !day.isBefore(from) && day.isBefore(until))
                .map(day -> Pace.position(from, day)).distinct().toList();
        return at.isEmpty() ? CleaningSchedule.NEVER : new CleaningSchedule(at, Double.POSITIVE_INFINITY, restores);
    }
}
