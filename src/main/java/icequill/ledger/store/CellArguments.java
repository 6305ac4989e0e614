package icequill.ledger.store;

import icequill.money.MinorUnits;
import java.lang.reflect.Type;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;
import org.jdbi.v3.core.argument.Argument;
import org.jdbi.v3.core.argument.ArgumentFactory;
import org.jdbi.v3.core.config.ConfigRegistry;
import org.jdbi.v3.core.generic.GenericTypes;
import org.jspecify.annotations.Nullable;

/**
 * How values stand in cells: days and moments as ISO 8601 writes them, truths as 1 and 0, amounts in minor units, of several texts a line each, of
 * several constants a word each.
 */
final class CellArguments implements ArgumentFactory.Preparable {

    private static final Set<Class<?>> DAYS = Set.of(LocalDate.class, Instant.class, ZonedDateTime.class);

    @Override
    public Optional<Function<Object, Argument>> prepare(Type type, ConfigRegistry config) {
        return cell(GenericTypes.getErasedType(type))
                .map(cell -> value -> argument(value == null ? null : cell.apply(value)));
    }

    private static Optional<Function<Object, Object>> cell(Class<?> type) {
        if (DAYS.contains(type)) {
            return Optional.of(String::valueOf);
        }
        if (type == boolean.class) {
            return Optional.of(truth -> (Boolean) truth ? 1 : 0);
        }
        if (MonetaryAmount.class.isAssignableFrom(type)) {
            return Optional.of(amount -> MinorUnits.of((MonetaryAmount) amount));
        }
        return List.class.isAssignableFrom(type)
                ? Optional.of(several -> several((List<?>) several))
                : Optional.empty();
    }

    private static String several(List<?> all) {
        return all.stream().allMatch(Enum.class::isInstance)
                ? all.stream().map(word -> ((Enum<?>) word).name()).collect(Collectors.joining(" "))
                : all.stream().map(String::valueOf).collect(Collectors.joining("\n"));
    }

    private static Argument argument(@Nullable Object cell) {
        return cell == null
                ? (at, statement, context) -> statement.setNull(at, Types.VARCHAR)
                : (at, statement, context) -> statement.setObject(at, cell);
    }
}
