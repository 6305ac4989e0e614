package icequill.web.page;

import freemarker.cache.ClassTemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** The templates of the pages, all of them ours. Whatever they write is escaped. */
final class PageTemplates {

    private static final String FOLDER = "/icequill/web";

    private final Configuration configuration;

    PageTemplates() {
        configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setTemplateLoader(new ClassTemplateLoader(PageTemplates.class, FOLDER));
        configuration.setDefaultEncoding("UTF-8");
        configuration.setURLEscapingCharset("UTF-8");
        configuration.setLocale(Locale.ROOT);
        configuration.setLocalizedLookup(false);
        configuration.setNumberFormat("computer");
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setObjectWrapper(new PlainObjects());
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
    }

    /**
     * A page as HTML.
     *
     * @param shown {@code it} in the template
     */
    String fill(String name, Frame frame, Object shown) {
        Map<String, Object> model = new HashMap<>(new Functions(frame.reader()).byName());
        model.put("it", shown);
        model.put("frame", frame);
        StringWriter page = new StringWriter();
        try {
            configuration.getTemplate(name + ".ftlh").process(model, page);
        } catch (IOException | TemplateException broken) {
            throw broken instanceof IOException unreadable
                    ? new UncheckedIOException(unreadable)
                    : new IllegalStateException("template " + name, broken);
        }
        return page.toString();
    }
}
