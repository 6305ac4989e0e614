package icequill.web.visit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a visit's form says, or a part of it, by its keys. */
record Told(Map<?, ?> values) {

    static final Told NOTHING = new Told(Map.of());

    /** A text, a number as it is typed, or whether something is so. */
    Optional<String> text(String key) {
        return Optional.ofNullable(values.get(key)).map(Told::typed).filter(text -> !text.isEmpty());
    }

    /** A part, empty where there is none. */
    Told part(String key) {
        return values.get(key) instanceof Map<?, ?> part ? new Told(part) : NOTHING;
    }

    /** The rows of a list. */
    List<Told> rows(String key) {
        return list(key).stream().<Told>map(row -> row instanceof Map<?, ?> map ? new Told(map) : NOTHING).toList();
    }

    /** The texts of a list. */
    List<String> texts(String key) {
        return list(key).stream().<String>map(Told::typed).toList();
    }

    private List<?> list(String key) {
        return values.get(key) instanceof List<?> list ? list : List.of();
    }

    /** Three decimals could be read as thousands; a zero at the end is a digit that was read. */
    private static String typed(Object value) {
        return value instanceof BigDecimal number
                ? number.toPlainString().replaceFirst("^([1-9][0-9]*[.][0-9]{3})$", "$10")
                : String.valueOf(value);
    }
}
