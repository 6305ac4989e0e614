package icequill.forecast;

import icequill.explain.Figure;
import icequill.problem.Check;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * How many calls a year a choice must avoid to pay for itself.
 *
 * @param calls the fewest whole ones; 0 where it costs no more to begin with; empty where calls cost nothing
 * @param quotient what it costs more over what a call costs, before it is raised to a whole number
 */
public record BreakEven(Optional<Integer> calls, Figure quotient) {

    private static final int MOST = 1_000_000;

    /**
     * From amounts of minor units.
     *
     * @param more what the choice costs more a year than its rival, whatever happens; may be negative
     * @param call what a call costs on average, from 0
     */
    public static BreakEven of(long more, long call) {
        Check.that(call >= 0, "a call at " + call);
        Figure above = Figure.term(Math.max(0, more), "");
        if (call == 0) {
            return new BreakEven(more <= 0 ? Optional.of(0) : Optional.empty(), above);
        }
        Figure quotient = above.over(Figure.term(call, ""));
        double calls = new Figure.RaisedTo(quotient, BigDecimal.ONE).exact().doubleValue();
        return new BreakEven(calls > MOST ? Optional.empty() : Optional.of((int) calls), quotient);
    }

    /** What a call costs on average, in minor units, rounded once; 0 where none is expected. */
    public static long meanCall(Forecast forecast) {
        double calls = forecast.calls().mean();
        return calls == 0 ? 0 : MinorUnits.expected(forecast.charges().mean() / calls);
    }
}
