package icequill.cli.terminal;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** What was typed as {@code name=value}. */
public record NamedValue(String name, String value) {

    /** Reads one. */
    public static final class Reader implements ITypeConverter<NamedValue> {

        @Override
        public NamedValue convert(String text) {
            int equals = text.indexOf('=');
            if (equals < 1) {
                throw new TypeConversionException("'" + text + "' is not a name and a value with = between them");
            }
            return new NamedValue(text.substring(0, equals), text.substring(equals + 1));
        }
    }

    /** The values by their names, in the order in which they were typed; a name that was typed twice is a problem. */
    public static Validated<Map<String, String>> byName(List<NamedValue> all) {
        Problems problems = new Problems();
        Map<String, String> values = new LinkedHashMap<>();
        all.forEach(each -> {
            String before = values.putIfAbsent(each.name(), each.value());
            if (before != null) {
                problems.add(Code.DUPLICATE_NAME, Place.NOWHERE,
                        each.name() + " is given twice, as " + before + " and as " + each.value(), "each once");
            }
        });
        return problems.or(() -> values);
    }
}
