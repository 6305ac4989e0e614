package icequill.ledger.store;

import icequill.ledger.store.CellValue.Parsed;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.jdbi.v3.core.config.ConfigRegistry;
import org.jdbi.v3.core.mapper.Nested;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.mapper.reflect.ColumnName;
import org.jdbi.v3.core.result.ResultSetException;
import org.jdbi.v3.core.statement.StatementContext;

/**
 * Makes records of rows. A component is of the column that is called like it ({@code storeNumber} of {@code store_number}), or as {@link ColumnName}
 * says; a record within it is of the same row, of columns that begin with what {@link Nested} says; only what is Optional may be empty. A list of texts is
 * a line each, one of constants a word each; a list of records stands in another table, and has none yet. What no program wrote in a cell is a {@link DamagedRow}. JDBI's own mappers let empty cells
 * through, and read no rows but those of a database.
 *
 * @param <T> the record
 */
public final class RecordRow<T> implements RowMapper<T> {

    private static final Map<String, RecordRow<?>> KNOWN = new ConcurrentHashMap<>();
    private static final Pattern CAPITAL = Pattern.compile("(?=[A-Z])");
    private static final Pattern LINE = Pattern.compile("\n");
    private static final Pattern BLANK = Pattern.compile(" ");

    private final Class<T> type;
    private final Constructor<T> constructor;
    private final List<Part> parts;

    /** @param column the first that it is made of */
    private record Part(String column, Value value) {}

    /** What a component is, by the cells of a row. */
    @FunctionalInterface
    private interface Value {
        Object of(Cells row);
    }

    private RecordRow(Class<T> type, String prefix) {
        RecordComponent[] components = type.getRecordComponents();
        this.type = type;
        this.parts = Arrays.stream(components).map(component -> part(component, prefix)).toList();
        try {
            this.constructor = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException none) {
            throw new IllegalStateException(none);
        }
        constructor.setAccessible(true);
    }

    /** The one for a record. */
    public static <T> RecordRow<T> of(Class<T> type) {
        return of(type, "");
    }

    @SuppressWarnings("unchecked")
    private static <T> RecordRow<T> of(Class<T> type, String prefix) {
        RecordRow<?> known = KNOWN.get(type.getName() + " " + prefix);
        if (known == null) {
            known = new RecordRow<>(type, prefix);
            KNOWN.put(type.getName() + " " + prefix, known);
        }
        return (RecordRow<T>) known;
    }

    /** For JDBI, which asks for mappers by type. */
    static Optional<RowMapper<?>> of(Type type, ConfigRegistry config) {
        return type instanceof Class<?> plain && plain.isRecord() ? Optional.of(of(plain)) : Optional.empty();
    }

    @Override
    public T map(ResultSet rows, StatementContext context) throws SQLException {
        try {
            return read(cells(rows, context));
        } catch (DamagedRow damaged) {
            throw new DamagedRow(rows.getMetaData().getTableName(1) + " \"" + rows.getString(1) + "\": "
                    + damaged.getMessage());
        }
    }

    /** The cells of the row that a database is at. */
    public static Cells cells(ResultSet rows, StatementContext context) {
        return column -> {
            try {
                return rows.getString(column);
            } catch (SQLException failed) {
                throw new ResultSetException("no column " + column, failed, context);
            }
        };
    }

    /** The record of a row, wherever that stands. */
    public T read(Cells row) {
        Object[] values = new Object[parts.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = parts.get(i).value().of(row);
        }
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof DateTimeException
                    || refused.getCause() instanceof IllegalArgumentException) {
                throw new DamagedRow(parts.getFirst().column() + " and the rest make no " + type.getSimpleName() + ": "
                        + refused.getCause().getMessage());
            }
            throw new IllegalStateException(refused);
        } catch (ReflectiveOperationException none) {
            throw new IllegalStateException(none);
        }
    }

    private static Part part(RecordComponent component, String prefix) {
        ColumnName name = component.getAccessor().getAnnotation(ColumnName.class);
        Nested nested = component.getAccessor().getAnnotation(Nested.class);
        return part(component.getGenericType(),
                prefix + (name == null
                        ? CAPITAL.matcher(component.getName()).replaceAll("_").toLowerCase(Locale.ROOT)
                        : name.value()),
                nested == null ? prefix : nested.value() + "_");
    }

    private static Part part(Type type, String column, String prefix) {
        return switch (type) {
        case Class<?> plain when plain.isRecord() -> {
            RecordRow<?> record = of(plain, prefix);
            yield new Part(record.parts.getFirst().column(), record::read);
        }
        case Class<?> plain -> {
            Parsed parsed = CellValue.of(plain);
            yield new Part(column, row -> parsed.of(column, needed(row, column)));
        }
        case ParameterizedType several -> several(several, column, prefix);
        default -> throw new IllegalStateException(type.toString());
        };
    }

    private static Part several(ParameterizedType type, String column, String prefix) {
        Type held = type.getActualTypeArguments()[0];
        if (type.getRawType() == Optional.class) {
            Part part = part(held, column, prefix);
            return new Part(part.column(),
                    row -> row.text(part.column()) == null ? Optional.empty() : Optional.of(part.value().of(row)));
        }
        if (held == String.class) {
            return new Part(column, row -> LINE.splitAsStream(needed(row, column)).toList());
        }
        if (held instanceof Class<?> words && words.isEnum()) {
            Parsed parsed = CellValue.of(words);
            return new Part(column, row -> BLANK.splitAsStream(needed(row, column)).filter(word -> !word.isEmpty())
                    .map(word -> parsed.of(column, word)).toList());
        }
        return new Part(column, row -> List.of());
    }

    private static String needed(Cells row, String column) {
        String text = row.text(column);
        if (text == null) {
            throw new DamagedRow(column + " is empty");
        }
        return text;
    }
}
