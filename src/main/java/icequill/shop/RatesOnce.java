package icequill.shop;

import icequill.render.Printer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** By what a shop prices and prints, found out when it is first asked for and then kept. For many threads. */
final class RatesOnce {

    private final boolean isOfFolder;
    private @Nullable RatesInUse known;
    private @Nullable Printer printer;

    private RatesOnce(boolean isOfFolder) {
        this.isOfFolder = isOfFolder;
    }

    /** Those in force. */
    static RatesOnce inForce() {
        return new RatesOnce(false);
    }

    /** Those of the folder, whatever is in force. */
    static RatesOnce ofFolder() {
        return new RatesOnce(true);
    }

    /** Some that are known already. */
    static RatesOnce known(RatesInUse rates) {
        RatesOnce once = new RatesOnce(false);
        once.known = rates;
        return once;
    }

    boolean isOfFolder() {
        return isOfFolder;
    }

    synchronized RatesInUse of(Supplier<RatesInUse> finding) {
        RatesInUse found = known == null ? finding.get() : known;
        known = found;
        return found;
    }

    /** Prints with the templates that belong to them; a template is read for the first paper only. */
    synchronized Printer printer(Supplier<RatesInUse> finding) {
        Printer made = printer == null ? Printer.of(of(finding).folder()) : printer;
        printer = made;
        return made;
    }
}
