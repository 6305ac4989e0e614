package icequill.shop;

import icequill.explain.ConstantKey;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A setting of shop.yaml that may be changed one by one. */
public enum Setting {

    NAME("name"), STREET("address.street[0]"), CITY("address.city"), REGION("address.region"),
    POSTAL_CODE("address.postalCode"), PHONE("phone"), EMAIL("email"), LANGUAGE("language"), PAPER("paper"),
    ACCENT("accent"), PAYMENT_DAYS("paymentDays"), CANCEL_DAYS("cancelDays"),
    REFUSE_DAYS("refuseDays"), RENEWAL_MONTHS("renewalMonths"), LOGO("logo");

    private final String path;

    Setting(String path) {
        this.path = path;
    }

    /** Where it stands. */
    String path() {
        return path;
    }

    /** As it is asked for, such as {@code postal-code}. */
    public String key() {
        return ConstantKey.of(this);
    }

    public static Optional<Setting> of(String key) {
        return Arrays.stream(values()).filter(setting -> setting.key().equals(key)).findFirst();
    }

    /** The one that stands somewhere in shop.yaml; empty where none does. */
    public static Optional<Setting> at(String path) {
        return Arrays.stream(values()).filter(setting -> setting.path.equals(path)).findFirst();
    }

    public static List<String> keys() {
        return Arrays.stream(values()).map(Setting::key).toList();
    }
}
