package icequill.render.page;

import freemarker.template.ObjectWrapper;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateBooleanModel;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateSequenceModel;
import icequill.render.words.Words;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Shows templates the components of {@link Texts}, and of all other objects nothing: no method, no property, no class. */
public class TextsOnly implements ObjectWrapper {

    @Override
    public @Nullable TemplateModel wrap(@Nullable Object value) throws TemplateModelException {
        return switch (value) {
        case null -> null;
        case TemplateModel made -> made;
        case String text -> new SimpleScalar(text);
        case Boolean yes -> yes ? TemplateBooleanModel.TRUE : TemplateBooleanModel.FALSE;
        case Optional<?> perhaps -> wrap(perhaps.orElse(null));
        case List<?> items -> new Items(items, this);
        case Words words -> new Named(name -> wrap(words.find(name)));
        case Page page -> new Named(name -> part(page, name));
        case Texts part -> new Named(name -> component(part, name));
        default -> throw new TemplateModelException("a template may read texts only, no " + value.getClass().getName());
        };
    }

    private @Nullable TemplateModel part(Page page, String name) throws TemplateModelException {
        for (Texts part : page.parts()) {
            if (Components.of(part.getClass()).containsKey(name)) {
                return component(part, name);
            }
        }
        return null;
    }

    private @Nullable TemplateModel component(Texts part, String name) throws TemplateModelException {
        Method accessor = Components.of(part.getClass()).get(name);
        if (accessor == null) {
            return null;
        }
        try {
            return wrap(accessor.invoke(part));
        } catch (IllegalAccessException | InvocationTargetException unreadable) {
            throw new IllegalStateException("the component " + name + " cannot be read", unreadable);
        }
    }

    /** Values by their names. */
    private record Named(Read by) implements TemplateHashModel {

        interface Read {
            @Nullable
            TemplateModel value(String name) throws TemplateModelException;
        }

        @Override
        public @Nullable TemplateModel get(String name) throws TemplateModelException {
            return by.value(name);
        }

        @Override
        public boolean isEmpty() {
            return false;
        }
    }

    /** Values in a row. */
    private record Items(List<?> items, TextsOnly wrapper) implements TemplateSequenceModel {

        @Override
        public @Nullable TemplateModel get(int index) throws TemplateModelException {
            return index >= 0 && index < items.size() ? wrapper.wrap(items.get(index)) : null;
        }

        @Override
        public int size() {
            return items.size();
        }
    }
}
