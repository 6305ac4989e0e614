package icequill.answer;

import icequill.answer.forecast.CallsHeld;
import icequill.forecast.Decimals;
import icequill.forecast.Tally;
import icequill.forecast.stops.CountDistribution;
import icequill.plans.EstimateLevels.Level;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Calls of a year, held against what each guess would have led us to expect.
 *
 * @param what they were for, or where
 * @param atLeast calls that are surely meant
 * @param atMost the same with those that may be meant or not
 */
record CallsComparison(String what, Map<Level, CountDistribution> expected, int atLeast, int atMost) {

    private static final int DIGITS = 6;

    CallsComparison {
        expected = new EnumMap<>(expected);
    }

    static CallsComparison none(String what) {
        Map<Level, CountDistribution> none = new EnumMap<>(Level.class);
        Stream.of(Level.values()).forEach(level -> none.put(level, CountDistribution.NONE));
        return new CallsComparison(what, none, 0, 0);
    }

    /** Both together, under this one's name; what comes at one does not depend on the other. */
    CallsComparison plus(CallsComparison other) {
        Map<Level, CountDistribution> sum = new EnumMap<>(Level.class);
        expected.forEach((level, counts) -> sum.put(level, counts.plus(other.of(level))));
        return new CallsComparison(what, sum, atLeast + other.atLeast, atMost + other.atMost);
    }

    private CountDistribution of(Level level) {
        return expected.getOrDefault(level, CountDistribution.NONE);
    }

    Tally usual() {
        return tally(Level.USUAL);
    }

    private Tally tally(Level level) {
        return new Tally(of(level), atLeast, atMost);
    }

    /** The guess by which what came was likeliest; of equal ones the usual one. */
    Level closest() {
        return Stream.of(Level.USUAL, Level.LOW, Level.HIGH)
                .max(Comparator.<Level>comparingDouble(level -> tally(level).chance())
                        .thenComparing(level -> level == Level.USUAL))
                .orElseThrow();
    }

    double mean(Level level) {
        return of(level).mean();
    }

    /** As the shop's file calls its figures. */
    static String word(Level level) {
        return switch (level) {
        case LOW -> "careful";
        case USUAL -> "usual";
        case HIGH -> "gloomy";
        };
    }

    private String had() {
        return atLeast == atMost ? String.valueOf(atLeast) : atLeast + " to " + atMost;
    }

    private String verdict() {
        return switch (usual().fit()) {
        case FEWER -> "fewer than the usual guess allows";
        case FITS -> "fits the usual guess";
        case MORE -> "more than the usual guess allows";
        };
    }

    /** One line of a table. */
    List<String> row() {
        Tally usual = usual();
        return List.of(what, Decimals.of(mean(Level.USUAL), 1).toPlainString(), usual.low() + " to " + usual.high(),
                had(), verdict(), word(closest()));
    }

    CallsHeld held() {
        return new CallsHeld(what, guesses(this::mean), usual().low(), usual().high(), atLeast, atMost, usual().fit(),
                guesses(level -> tally(level).chance()), word(closest()));
    }

    private static CallsHeld.Guesses guesses(ToDoubleFunction<Level> value) {
        return new CallsHeld.Guesses(Decimals.of(value.applyAsDouble(Level.LOW), DIGITS),
                Decimals.of(value.applyAsDouble(Level.USUAL), DIGITS),
                Decimals.of(value.applyAsDouble(Level.HIGH), DIGITS));
    }
}
