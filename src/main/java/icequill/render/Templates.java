package icequill.render;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.FileTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.render.limits.CountedTemplates;
import icequill.render.limits.LimitedText;
import icequill.render.limits.PrintRoom;
import icequill.render.limits.PrintThread;
import icequill.render.page.Page;
import icequill.render.page.TextsOnly;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * The templates: a shop's own where it has one, else ours. A template cannot reach classes, methods of objects, files or the
 * network; it gets texts and lists of texts, see {@link TextsOnly}, escaped wherever they are written.
 */
final class Templates {

    private final Configuration configuration;

    private Templates(Configuration configuration) {
        this.configuration = configuration;
    }

    /** @param own the shop's templates folder; it need not exist */
    static Templates of(Path own) {
        Configuration configuration = new CountedTemplates();
        List<TemplateLoader> loaders = new ArrayList<>();
        if (Files.isDirectory(own)) {
            try {
                loaders.add(new FileTemplateLoader(own.toFile()));
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
        loaders.add(new ClassTemplateLoader(Templates.class, "/icequill/templates"));
        configuration.setTemplateLoader(new MultiTemplateLoader(loaders.toArray(TemplateLoader[]::new)));
        configuration.setDefaultEncoding("UTF-8");
        configuration.setLocale(Locale.ROOT);
        configuration.setLocalizedLookup(false);
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setObjectWrapper(new TextsOnly());
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setWrapUncheckedExceptions(true);
        return new Templates(configuration);
    }

    /** The filled-in template, or what is wrong with it. */
    Validated<String> fill(String name, Page page) {
        try {
            Template template = configuration.getTemplate(name);
            LimitedText out = new LimitedText();
            template.process(page, out);
            return Validated.valid(out.toString());
        } catch (LimitedText.Full full) {
            return PrintRoom.limit("the template " + name + " writes " + full.getMessage());
        } catch (ParseException broken) {
            return invalid(broken.getTemplateName(), broken.getLineNumber(), broken.getEditorMessage());
        } catch (TemplateException failed) {
            if (failed.getCause() instanceof LimitedText.Full full) {
                return PrintRoom.limit("the template " + name + " writes " + full.getMessage());
            }
            int line = Objects.requireNonNullElse(failed.getLineNumber(), 0);
            return invalid(failed.getTemplateSourceName(), line, failed.getMessageWithoutStackTop());
        } catch (RuntimeException failed) {
            if (PrintThread.isSpent()) {
                return PrintRoom
                        .limit("the template " + name + " goes on without end: it takes more steps than it may");
            }
            throw failed;
        } catch (IOException unreadable) {
            return invalid(name, 0, String.valueOf(unreadable.getMessage()));
        }
    }

    private static Validated<String> invalid(String template, int line, String message) {
        String first = message.lines().findFirst().orElse("");
        return Validated.invalid(new Problem(Code.TEMPLATE, new Place("templates/" + template, Math.max(0, line), ""),
                first, "mend the line, or move your copy out of templates/ to use ours again"));
    }
}
