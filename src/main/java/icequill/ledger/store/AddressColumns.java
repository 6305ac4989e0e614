package icequill.ledger.store;

/** The columns of an address, and the values of the component {@code address} that stand in them. */
public final class AddressColumns {

    /** In the order of {@link #VALUES}. */
    public static final String NAMES = "street, city, region, postal_code, country";
    public static final String VALUES = ":address.street, :address.city, :address.region, :address.postalCode, :address.country";
    public static final String SET = "street = :address.street, city = :address.city, region = :address.region,"
            + " postal_code = :address.postalCode, country = :address.country";

    private AddressColumns() {
    }
}
