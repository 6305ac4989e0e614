package icequill.answer.history;

import icequill.explain.ConstantKey;
import icequill.money.Amounts;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.money.MonetaryAmount;
import org.jspecify.annotations.Nullable;

/**
 * Answers as JSON, by the names of their components: what is empty is left out, a component {@code isForgotten} is called
 * {@code forgotten}, and beside an amount stands its currency.
 */
public final class RecordJson {

    private static final Pattern ASKING = Pattern.compile("^(?:is|has)(?=[A-Z])");
    private static final String CURRENCY = "currency";

    private RecordJson() {
    }

    /** The record as keys and values. */
    public static Map<String, Object> of(Record answer) {
        Map<String, Object> view = new LinkedHashMap<>();
        for (RecordComponent component : answer.getClass().getRecordComponents()) {
            Object value = value(answer, component);
            Object held = value instanceof Optional<?> may ? may.orElse(null) : value;
            if (held instanceof MonetaryAmount amount) {
                view.put(CURRENCY, amount.getCurrency().getCurrencyCode());
                view.put(component.getName(), Amounts.plain(amount));
            } else if (held != null) {
                view.put(key(component.getName()), json(held));
            }
        }
        return view;
    }

    /** An amount by itself. */
    public static Map<String, Object> amount(MonetaryAmount amount) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put(CURRENCY, amount.getCurrency().getCurrencyCode());
        view.put("amount", Amounts.plain(amount));
        return view;
    }

    private static String key(String name) {
        String key = ASKING.matcher(name).replaceFirst("");
        return key.equals(name) ? name : key.substring(0, 1).toLowerCase(Locale.ROOT) + key.substring(1);
    }

    private static Object json(Object value) {
        return switch (value) {
        case Record record -> of(record);
        case Collection<?> several -> several.stream().map(RecordJson::json).toList();
        case MonetaryAmount amount -> amount(amount);
        case Enum<?> constant -> ConstantKey.of(constant);
        case ZonedDateTime moment -> DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(moment);
        case BigDecimal number -> number.toPlainString();
        case Boolean truth -> truth;
        case Integer count -> count;
        default -> value.toString();
        };
    }

    private static @Nullable Object value(Record answer, RecordComponent component) {
        try {
            return component.getAccessor().invoke(answer);
        } catch (IllegalAccessException | InvocationTargetException impossible) {
            throw new IllegalStateException(component.toString(), impossible);
        }
    }
}
