package icequill.files.pricing;

import icequill.explain.ConstantKey;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/** Prices that are raised together. */
public enum PriceGroup {

    LABOR("labor", "grades\\[\\d+]\\.(hourly|firstHour|travel)\\..+"),
    SERVICE_CALL("service-call", "zones\\[\\d+]\\.prices\\..+"), MILES("service-call", "beyond|perMile"),
    CHEMICALS("materials", PriceGroup.ITEM), FILTERS("materials", PriceGroup.ITEM),
    PARTS("materials", PriceGroup.ITEM), DISPOSAL("materials", PriceGroup.ITEM),
    MODIFIERS("adjustments", "modifiers\\[\\d+]\\.price"),
    FEES("adjustments", "fees\\[\\d+]\\.amount"),
    FLAT("tiers", "flat\\.machines\\[\\d+]\\.price");

    private static final String ITEM = "items\\[\\d+]\\.price";

    private final String kind;
    private final Pattern path;

    PriceGroup(String kind, String path) {
        this.kind = kind;
        this.path = Pattern.compile(path);
    }

    /** The kind of file that holds them. */
    String kind() {
        return kind;
    }

    /** As it is asked for, such as {@code service-call}. */
    public String key() {
        return ConstantKey.of(this);
    }

    public static Optional<PriceGroup> of(String key) {
        return Arrays.stream(values()).filter(group -> group.key().equals(key)).findFirst();
    }

    public static List<String> keys() {
        return Arrays.stream(values()).map(PriceGroup::key).toList();
    }

    /**
     * Whether a value of a file of its kind is one of its prices.
     *
     * @param beside gives the text of another key of the same entry
     */
    boolean holds(String found, UnaryOperator<String> beside) {
        return path.matcher(found).matches()
                && (!kind.equals("materials") || beside.apply("class").equals(key()));
    }
}
