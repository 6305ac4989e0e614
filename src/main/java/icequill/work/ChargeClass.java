package icequill.work;

import icequill.explain.Fact;
import java.util.Locale;

/** What a charge is for. Taxes, discounts and agreements treat the classes differently. */
public enum ChargeClass {
    CLEANING, REPAIR, DIAGNOSIS, TRAVEL, CHEMICALS, FILTERS, PARTS, DISPOSAL,
    /** A payment of a maintenance agreement. */
    AGREEMENT;

    /** Its name, for a reader. */
    public Fact word() {
        return new Fact.Word("class." + name().toLowerCase(Locale.ROOT));
    }

    /** Whether a technician's time can be charged under this class. */
    public boolean isLabor() {
        return switch (this) {
        case CLEANING, REPAIR, DIAGNOSIS, TRAVEL -> true;
        case CHEMICALS, FILTERS, PARTS, DISPOSAL, AGREEMENT -> false;
        };
    }

    /** Whether it is something that stays with the customer. */
    public boolean isFurnished() {
        return this == FILTERS || this == PARTS;
    }
}
