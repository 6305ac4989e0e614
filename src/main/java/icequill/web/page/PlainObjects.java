package icequill.web.page;

import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import icequill.explain.ConstantKey;
import icequill.render.page.Texts;
import icequill.render.page.TextsOnly;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Shows answers to templates as they are: what is empty as nothing, constants by their names in JSON, parts of papers as papers do. */
final class PlainObjects extends DefaultObjectWrapper {

    private static final TextsOnly TEXTS = new TextsOnly();

    PlainObjects() {
        super(Configuration.VERSION_2_3_34);
    }

    @Override
    public @Nullable TemplateModel wrap(@Nullable Object object) throws TemplateModelException {
        return switch (object) {
        case null -> super.wrap(null);
        case Optional<?> optional -> wrap(optional.orElse(null));
        case Enum<?> constant -> super.wrap(ConstantKey.of(constant));
        case Texts texts -> TEXTS.wrap(texts);
        default -> super.wrap(object);
        };
    }
}
