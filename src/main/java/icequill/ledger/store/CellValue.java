package icequill.ledger.store;

import java.math.BigInteger;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;

/** What the texts of cells say, by the types of the program. */
final class CellValue {

    private static final Map<Class<?>, Parsed> ALL = Map.of(
            String.class, new Parsed("text", text -> text),
            int.class, new Parsed("number of that size", Integer::valueOf),
            Integer.class, new Parsed("number of that size", Integer::valueOf),
            long.class, new Parsed("number of that size", Long::valueOf),
            BigInteger.class, new Parsed("whole number", BigInteger::new),
            boolean.class, new Parsed("1 or 0", text -> Integer.parseInt(text) == 1),
            LocalDate.class, new Parsed("day", LocalDate::parse),
            Instant.class, new Parsed("moment", Instant::parse),
            ZonedDateTime.class, new Parsed("moment", ZonedDateTime::parse));

    private CellValue() {
    }

    /**
     * How a text is read.
     *
     * @param what it has to be
     */
    record Parsed(String what, Function<String, Object> parse) {

        /** @throws DamagedRow when it says no such thing */
        Object of(String column, String text) {
            try {
                return parse.apply(text);
            } catch (DateTimeException | IllegalArgumentException none) {
                throw new DamagedRow(column + " is \"" + text + "\", which is no " + what);
            }
        }
    }

    static Parsed of(Class<?> type) {
        Parsed known = ALL.get(type);
        if (known != null) {
            return known;
        }
        Object[] constants = type.getEnumConstants();
        return new Parsed(type.getSimpleName(), text -> Arrays.stream(constants)
                .filter(constant -> ((Enum<?>) constant).name().equals(text)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(text)));
    }
}
