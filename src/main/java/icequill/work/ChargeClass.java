package icequill.work;

/** What a charge is for. Taxes, discounts and agreements treat the classes differently. */
public enum ChargeClass {
    CLEANING, REPAIR, DIAGNOSIS, TRAVEL, CHEMICALS, FILTERS, PARTS, DISPOSAL;

    /** Whether a technician's time can be charged under this class. */
    public boolean isLabor() {
        return switch (this) {
        case CLEANING, REPAIR, DIAGNOSIS, TRAVEL -> true;
        case CHEMICALS, FILTERS, PARTS, DISPOSAL -> false;
        };
    }

    /** Whether it is something that stays with the customer. */
    public boolean isFurnished() {
        return this == FILTERS || this == PARTS;
    }
}
