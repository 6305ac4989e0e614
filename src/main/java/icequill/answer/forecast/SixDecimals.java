package icequill.answer.forecast;

import icequill.forecast.Decimals;
import java.math.BigDecimal;

/** What is estimated is told to six decimals. */
final class SixDecimals {

    private static final int DIGITS = 6;

    private SixDecimals() {
    }

    static BigDecimal of(double value) {
        return Decimals.of(value, DIGITS);
    }
}
