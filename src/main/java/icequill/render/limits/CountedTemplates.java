package icequill.render.limits;

import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.Template;
import java.io.IOException;
import java.util.Collections;
import java.util.Locale;
import java.util.Set;
import java.util.WeakHashMap;
import org.jspecify.annotations.Nullable;

/** Templates, and those they include, that ask at each turn of a loop and each call whether to go on; see {@link PrintThread}. */
public final class CountedTemplates extends Configuration {

    private final Set<Template> counted = Collections.newSetFromMap(new WeakHashMap<>());

    public CountedTemplates() {
        super(VERSION_2_3_34);
    }

    @Override
    public @Nullable Template getTemplate(String name, @Nullable Locale locale, @Nullable Object condition,
            @Nullable String encoding, boolean parsed, boolean mayBeMissing) throws IOException {
        synchronized (counted) {
            Template template = super.getTemplate(name, locale, condition, encoding, parsed, mayBeMissing);
            if (template != null && counted.add(template)) {
                _CoreAPI.addThreadInterruptedChecks(template);
            }
            return template;
        }
    }
}
