package icequill.work;

import java.util.Arrays;
import java.util.Optional;

/**
 * What quantities are counted in. The codes are those of UN/ECE Recommendation 20 (units) as EN 16931 accepts them.
 */
public enum Unit {
    MINUTE("min", "MIN"), HOUR("h", "HUR"), DAY("day", "DAY"), MILE("mi", "SMI"), VISIT("visit", "E48"),
    EACH("ea", "EA"),
    FLUID_OUNCE("floz", "OZA"), GALLON("gal", "GLL"), MILLILITER("ml", "MLT"), LITER("l", "LTR"), OUNCE("oz", "ONZ"),
    POUND("lb", "LBR"), GRAM("g", "GRM"), FOOT("ft", "FOT"), DOCUMENT("doc", "LS");

    private final String symbol;
    private final String code;

    Unit(String symbol, String code) {
        this.symbol = symbol;
        this.code = code;
    }

    /** As files and explanations write it. */
    public String symbol() {
        return symbol;
    }

    /** As electronic invoices write it. */
    public String code() {
        return code;
    }

    public static Optional<Unit> ofSymbol(String symbol) {
        return Arrays.stream(values()).filter(unit -> unit.symbol.equals(symbol)).findFirst();
    }
}
