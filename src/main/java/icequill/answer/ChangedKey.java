package icequill.answer;

import icequill.files.yaml.Json;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.Monetary;
import tools.jackson.core.JacksonException;

/**
 * A key of an entry that a change gave another value.
 *
 * @param key with its place, such as {@code billTo.1.city}, counted from 1
 * @param before and {@code after}: empty where there was no such key
 */
public record ChangedKey(String key, Optional<String> before, Optional<String> after) {

    /** What was recorded of an entry as it was given; its keys are told as the entry's own. */
    private static final String DATA = "data";
    /** Ends the names of amounts in minor units of the entry's currency. */
    private static final String MINOR = "Minor";
    private static final String CURRENCY = "currency";
    private static final Pattern MINOR_UNITS = Pattern.compile("-?[0-9]{1,18}");
    private static final String NOTHING = "(nothing)";

    /** Of two entries of the trail, as JSON; by key. What stands in a column and among what was given is told once. */
    static List<ChangedKey> between(Optional<String> before, Optional<String> after) {
        List<ChangedKey> given = changes(given(before), given(after));
        Stream<ChangedKey> own = changes(columns(before), columns(after)).stream()
                .filter(column -> given.stream().noneMatch(column::isToldBy));
        return Stream.concat(own, given.stream()).toList();
    }

    /** Of two papers as JSON; by key. */
    public static List<ChangedKey> ofPapers(String before, String after) {
        return changes(flat(map(before)), flat(map(after)));
    }

    private boolean isToldBy(ChangedKey other) {
        return (other.key.equals(key) || other.key.endsWith("." + key)) && other.before.equals(before)
                && other.after.equals(after);
    }

    private static List<ChangedKey> changes(Map<String, String> before, Map<String, String> after) {
        Map<String, String> all = new TreeMap<>(before);
        all.putAll(after);
        return all.keySet().stream().map(
                key -> new ChangedKey(key, Optional.ofNullable(before.get(key)), Optional.ofNullable(after.get(key))))
                .filter(change -> !change.before.equals(change.after)).toList();
    }

    private static Map<String, String> columns(Optional<String> json) {
        Map<String, Object> columns = new LinkedHashMap<>(map(json.orElse("")));
        columns.remove(DATA);
        Map<String, String> flat = flat(columns);
        if (columns.get(CURRENCY) instanceof String currency && Monetary.isCurrencyAvailable(currency)
                && flat.keySet().stream().anyMatch(key -> key.endsWith(MINOR))) {
            flat.remove(CURRENCY);
            return amounts(flat, Monetary.getCurrency(currency));
        }
        return flat;
    }

    /** The same with amounts as people write them. */
    private static Map<String, String> amounts(Map<String, String> flat, CurrencyUnit currency) {
        Map<String, String> told = new LinkedHashMap<>();
        flat.forEach((key, value) -> {
            if (key.endsWith(MINOR) && MINOR_UNITS.matcher(value).matches()) {
                told.put(key.substring(0, key.length() - MINOR.length()), new BigDecimal(new BigInteger(value),
                        currency.getDefaultFractionDigits()).toPlainString() + " " + currency.getCurrencyCode());
            } else {
                told.put(key, value);
            }
        });
        return told;
    }

    private static Map<String, String> given(Optional<String> json) {
        return flat(map(String.valueOf(map(json.orElse("")).getOrDefault(DATA, ""))));
    }

    /** What cannot be read, which an audit tells, stays as it is. */
    private static Map<String, Object> map(String json) {
        try {
            return Json.map(json);
        } catch (JacksonException unreadable) {
            return Map.of(DATA, json);
        }
    }

    private static Map<String, String> flat(Map<String, Object> whole) {
        Map<String, String> flat = new LinkedHashMap<>();
        whole.forEach((key, value) -> flatten(key, value, flat));
        return flat;
    }

    private static void flatten(String key, Object value, Map<String, String> flat) {
        switch (value) {
        case Map<?, ?> map -> map.forEach((inner, held) -> flatten(key + "." + inner, held, flat));
        case List<?> list -> {
            for (int i = 0; i < list.size(); i++) {
                flatten(key + "." + (i + 1), list.get(i), flat);
            }
        }
        default -> flat.put(key, String.valueOf(value));
        }
    }

    /** The key, before and after. */
    public String text() {
        return text(false);
    }

    /** @param isNew whether the whole entry is, so that nothing was before */
    String text(boolean isNew) {
        return key + ": " + (isNew ? "" : before.orElse(NOTHING) + " -> ") + after.orElse(NOTHING);
    }
}
