package icequill.money;

import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.Monetary;

/** The currencies of ISO 4217 that have minor units, as the runtime knows them. */
public final class Currencies {

    private Currencies() {
    }

    /** The currency, unless the code is unknown or names one without minor units, such as gold (XAU). */
    public static Optional<CurrencyUnit> find(String code) {
        return Monetary.isCurrencyAvailable(code)
                ? Optional.of(Monetary.getCurrency(code)).filter(unit -> unit.getDefaultFractionDigits() >= 0)
                : Optional.empty();
    }
}
