package icequill.cli.terminal;

import icequill.explain.ConstantKey;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * The constants of an enumeration as people type them, in small letters with hyphens.
 *
 * @param <E> the enumeration
 */
public abstract class ConstantNames<E extends Enum<E>> implements ITypeConverter<E>, Iterable<String> {

    private final List<E> constants;

    protected ConstantNames(Class<E> type) {
        this.constants = Arrays.asList(type.getEnumConstants());
    }

    @Override
    public final E convert(String text) {
        return constants.stream().filter(constant -> ConstantKey.of(constant).equalsIgnoreCase(text)).findFirst()
                .orElseThrow(() -> new TypeConversionException(
                        "'" + text + "' is none of " + String.join(", ", this)));
    }

    @Override
    public final Iterator<String> iterator() {
        return constants.stream().map(ConstantKey::of).iterator();
    }
}
