package icequill.files.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.JavaType;
import tools.jackson.databind.PropertyName;
import tools.jackson.databind.SerializationConfig;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.cfg.MapperConfig;
import tools.jackson.databind.introspect.AnnotatedClass;
import tools.jackson.databind.introspect.BeanPropertyDefinition;
import tools.jackson.databind.introspect.VirtualAnnotatedMember;
import tools.jackson.databind.ser.BeanPropertyWriter;
import tools.jackson.databind.ser.VirtualBeanPropertyWriter;
import tools.jackson.databind.util.SimpleBeanPropertyDefinition;

/** Writes the currency of a record's amounts, which are all in one; nothing where none is there. */
final class CurrencyWriter extends VirtualBeanPropertyWriter {

    private static final long serialVersionUID = 1;

    private static final String NAME = "currency";

    private final transient List<BeanPropertyWriter> amounts;

    private CurrencyWriter(List<BeanPropertyWriter> amounts, BeanPropertyDefinition definition, AnnotatedClass owner,
            JavaType text) {
        super(definition, owner.getAnnotations(), text, null, null, null, definition.findInclusion(), null);
        this.amounts = amounts;
    }

    static CurrencyWriter of(List<BeanPropertyWriter> amounts, AnnotatedClass owner, SerializationConfig config) {
        JavaType text = config.constructType(String.class);
        return new CurrencyWriter(amounts, SimpleBeanPropertyDefinition.construct(config,
                new VirtualAnnotatedMember(owner, owner.getRawType(), NAME, text), PropertyName.construct(NAME), null,
                JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.ALWAYS)), owner, text);
    }

    @Override
    protected @Nullable Object value(Object answer, JsonGenerator json, SerializationContext context) throws Exception {
        for (BeanPropertyWriter amount : amounts) {
            Object held = amount.get(answer);
            if ((held instanceof Optional<?> may ? may.orElse(null) : held) instanceof MonetaryAmount found) {
                return found.getCurrency().getCurrencyCode();
            }
        }
        return null;
    }

    @Override
    public VirtualBeanPropertyWriter withConfig(MapperConfig<?> config, AnnotatedClass owner,
            BeanPropertyDefinition definition, JavaType type) {
        return this;
    }
}
