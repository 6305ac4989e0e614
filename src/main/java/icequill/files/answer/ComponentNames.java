package icequill.files.answer;

import java.util.Locale;
import java.util.regex.Pattern;
import tools.jackson.databind.PropertyNamingStrategy;
import tools.jackson.databind.cfg.MapperConfig;
import tools.jackson.databind.introspect.AnnotatedField;

/** A component that asks, such as {@code isForgotten}, is called by what it asks for. */
final class ComponentNames extends PropertyNamingStrategy {

    private static final long serialVersionUID = 1;

    private static final Pattern ASKING = Pattern.compile("^(?:is|has)(?=[A-Z])");

    @Override
    public String nameForField(MapperConfig<?> config, AnnotatedField field, String name) {
        String asked = ASKING.matcher(name).replaceFirst("");
        return asked.equals(name) ? name : asked.substring(0, 1).toLowerCase(Locale.ROOT) + asked.substring(1);
    }
}
