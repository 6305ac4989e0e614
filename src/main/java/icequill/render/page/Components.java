package icequill.render.page;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;

/** The components of a record by their names: the only methods that are called for a template. */
final class Components {

    private static final ClassValue<Map<String, Method>> OF_CLASS = new ClassValue<>() {
        @Override
        protected Map<String, Method> computeValue(Class<?> type) {
            Map<String, Method> components = new LinkedHashMap<>();
            RecordComponent[] declared = type.getRecordComponents();
            for (RecordComponent component : declared == null ? new RecordComponent[0] : declared) {
                Method accessor = component.getAccessor();
                accessor.setAccessible(true);
                components.put(component.getName(), accessor);
            }
            return components;
        }
    };

    private Components() {
    }

    /** Of a class that is no record there are none. */
    static Map<String, Method> of(Class<? extends Texts> type) {
        return OF_CLASS.get(type);
    }
}
