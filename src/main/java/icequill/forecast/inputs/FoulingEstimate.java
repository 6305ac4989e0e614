package icequill.forecast.inputs;

import java.math.BigDecimal;

/** How soon dirt on one side stops machines that nobody cleans, with a careful and a gloomy figure. */
public record FoulingEstimate(Stops usual, Stops low, Stops high, Origin origin) {

    /** As an owner counts: of twenty machines, how many have stopped by month 6, and by month 12. */
    public record Stops(BigDecimal bySix, BigDecimal byTwelve) {

        /** The machines that are counted. */
        public static final int OF = 20;
    }
}
