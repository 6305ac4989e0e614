package icequill.files.answer;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import icequill.explain.ConstantKey;
import icequill.files.yaml.Tree;
import icequill.files.yaml.TreeJson;
import icequill.money.Amounts;
import icequill.problem.Problem;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.function.Function;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/**
 * Writes answers by the names of their components. A component {@code isForgotten} is called {@code forgotten}; what is empty
 * is left out; an amount is a text with its currency's decimals, and beside it, in the same object, stands {@code currency};
 * constants are the words of {@link ConstantKey}; days and moments are as ISO 8601 has them; other numbers are numbers.
 */
public final class AnswerMapper {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .changeDefaultVisibility(seen -> seen.withVisibility(
                    PropertyAccessor.ALL, Visibility.NONE).withFieldVisibility(
                            Visibility.ANY))
            .changeDefaultPropertyInclusion(kept -> kept.withValueInclusion(JsonInclude.Include.NON_ABSENT))
            .propertyNamingStrategy(new ComponentNames())
            .addModule(types())
            .build();

    private AnswerMapper() {
    }

    /** An answer as indented JSON. */
    public static String text(Object answer) {
        return MAPPER.writeValueAsString(answer);
    }

    /** Writes an answer without blanks; what comes {@link OneByOne} is on lines of its own. */
    public static void stream(OutputStream out, Object answer) {
        MAPPER.writer().without(SerializationFeature.INDENT_OUTPUT).without(StreamWriteFeature.AUTO_CLOSE_TARGET)
                .writeValue(out, answer);
    }

    private static SimpleModule types() {
        return new SimpleModule("answers")
                .addSerializer(as(MonetaryAmount.class, Amounts::plain))
                .addSerializer(as(CurrencyUnit.class, CurrencyUnit::getCurrencyCode))
                .addSerializer(as(Enum.class, ConstantKey::of))
                .addSerializer(as(Path.class, Path::toString))
                .addSerializer(through(Problem.class, WrittenProblem::of))
                .addSerializer(through(Sheet.class, Sheet::data))
                .addSerializer(through(Tree.class, TreeJson::exact))
                .addSerializer(new OneByOneWriter())
                .setSerializerModifier(new CurrencyBeside());
    }

    private static <T> StdSerializer<T> through(Class<T> type, Function<T, Object> data) {
        return new StdSerializer<>(type) {
            @Override
            public void serialize(T value, JsonGenerator json, SerializationContext context) {
                context.writeValue(json, data.apply(value));
            }
        };
    }

    private static <T> StdSerializer<T> as(Class<T> type, Function<T, String> text) {
        return new StdSerializer<>(type) {
            @Override
            public void serialize(T value, JsonGenerator json, SerializationContext context) {
                json.writeString(text.apply(value));
            }
        };
    }
}
