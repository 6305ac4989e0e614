package icequill.forecast;

import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.StopPolicy;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

/**
 * Years of one machine drawn by chance, many more than tests should take, beside what is computed; src/docs/forecasts.md says how to start
 * them, and holds the results.
 */
public final class ForecastRuns {

    private static final long SEED = 20261126;
    private static final double YEAR = 12;
    private static final double ERRORS = 4;

    private ForecastRuns() {
    }

    /** {@code years 20000000}: of a machine cleaned every six months, and of one that nobody cleans, a year after its last cleaning. */
    public static void main(String[] args) {
        int years = Integer.parseInt(args[1]);
        run("cleaned every 6 months", CleaningSchedule.every(6), 0, years);
        run("never cleaned, 12 months after the last cleaning", CleaningSchedule.NEVER, 12, years);
    }

    private static void run(String what, CleaningSchedule care, double age, int years) {
        List<MachineRisk> machines = List
                .of(new MachineRisk(0.2, Optional.empty(), 0, ForecastTest.CLOCK, age));
        MaintenancePolicy choice = new MaintenancePolicy(0, care, CleaningSchedule.NEVER, ForecastTest.TABLE);
        Forecast forecast = Forecast.of(machines, choice, StopPolicy.RESETS, YEAR);
        SimulatedSite site = new SimulatedSite(new Random(SEED), machines, StopPolicy.RESETS, YEAR);
        double calls = 0;
        double squares = 0;
        double none = 0;
        double several = 0;
        double charges = 0;
        double chargeSquares = 0;
        for (int year = 0; year < years; year++) {
            SimulatedSite.Draw draw = site.draw(choice, choice);
            calls += draw.calls();
            squares += (double) draw.calls() * draw.calls();
            none += draw.calls() == 0 ? 1 : 0;
            several += draw.calls() > 1 ? 1 : 0;
            charges += draw.charges();
            chargeSquares += (double) draw.charges() * draw.charges();
        }
        double mean = calls / years;
        double variance = squares / years - mean * mean;
        double cost = charges / years;
        double deviation = Math.sqrt(chargeSquares / years - cost * cost);
        System.out.println(what + ", " + years + " years:");
        compare("calls", mean, forecast.calls().mean(), Math.sqrt(variance / years));
        compare("variance of calls", variance, forecast.calls().variance(), 3 * variance / Math.sqrt(years));
        compare("no call", none / years, forecast.calls().chance(0), 0.5 / Math.sqrt(years));
        compare("more than one", several / years, forecast.calls().chanceOfMoreThan(1), 0.5 / Math.sqrt(years));
        compare("charges in cents", cost, forecast.charges().mean(), deviation / Math.sqrt(years));
        compare("their deviation", deviation, forecast.charges().deviation(), 2 * deviation / Math.sqrt(years));
    }

    /** @throws IllegalStateException when they are more than four standard errors apart */
    private static void compare(String what, double drawn, double computed, double error) {
        System.out.println(String.format(Locale.ROOT, "  %-18s drawn %.6f, computed %.6f", what, drawn, computed));
        if (Math.abs(drawn - computed) > ERRORS * error) {
            throw new IllegalStateException(what + " are further apart than chance makes them");
        }
    }
}
