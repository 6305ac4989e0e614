package icequill.plans;

import icequill.forecast.inputs.Estimate;
import icequill.forecast.inputs.FoulingEstimate;
import java.math.BigDecimal;

/** Which of its three figures each estimate is taken at. */
public record EstimateLevels(Level faults, Level condenser, Level water) {

    public static final EstimateLevels CAREFUL = all(Level.LOW);
    public static final EstimateLevels USUAL = all(Level.USUAL);
    public static final EstimateLevels GLOOMY = all(Level.HIGH);

    public static EstimateLevels all(Level level) {
        return new EstimateLevels(level, level, level);
    }

    /** One of the three figures of an estimate. */
    public enum Level {
        LOW, USUAL, HIGH;

        BigDecimal of(Estimate estimate) {
            return switch (this) {
            case LOW -> estimate.low();
            case USUAL -> estimate.usual();
            case HIGH -> estimate.high();
            };
        }

        FoulingEstimate.Stops of(FoulingEstimate dirt) {
            return switch (this) {
            case LOW -> dirt.low();
            case USUAL -> dirt.usual();
            case HIGH -> dirt.high();
            };
        }
    }
}
