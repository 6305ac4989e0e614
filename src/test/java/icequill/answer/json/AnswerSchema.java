package icequill.answer.json;

import icequill.explain.ConstantKey;
import icequill.files.answer.OneByOne;
import icequill.files.answer.Sheet;
import icequill.files.answer.WrittenProblem;
import icequill.files.yaml.Tree;
import icequill.problem.Problem;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The JSON Schema of an answer, read off its components as the mapper writes them. */
final class AnswerSchema {

    private static final String DEFS = "#/$defs/";
    private static final Set<Class<?>> WHOLE = Set.of(int.class, Integer.class, long.class, Long.class);

    private final ObjectNode defs = JsonNodeFactory.instance.objectNode();

    static ObjectNode of(String name, Class<?> answer) {
        AnswerSchema schema = new AnswerSchema();
        ObjectNode whole = JsonNodeFactory.instance.objectNode();
        whole.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        whole.put("title", name);
        whole.setAll(schema.schema(answer));
        whole.set("$defs", schema.defs);
        return whole;
    }

    private ObjectNode schema(Type type) {
        if (type instanceof ParameterizedType of) {
            return of(of);
        }
        Class<?> plain = (Class<?>) type;
        if (Sheet.class.isAssignableFrom(plain)) {
            return schema(data(plain));
        }
        if (plain == Problem.class) {
            return schema(WrittenProblem.class);
        }
        if (plain == Tree.Branch.class) {
            return ref("keys", () -> described(typed("object"),
                    "Keys and values: of a form as icequill/schema in the program says, a machine as a part of a site's form; of a paper's data as its file carries them, in paper.json."));
        }
        if (plain.isRecord()) {
            return ref(name(plain), () -> record(plain));
        }
        if (plain.isSealed()) {
            ObjectNode any = JsonNodeFactory.instance.objectNode();
            ArrayNode kinds = any.putArray("anyOf");
            Arrays.stream(plain.getPermittedSubclasses()).forEach(kind -> kinds.add(schema(kind)));
            return any;
        }
        return value(plain);
    }

    private ObjectNode of(ParameterizedType type) {
        Type first = type.getActualTypeArguments()[0];
        if (type.getRawType() == Optional.class) {
            return schema(first);
        }
        ObjectNode several = JsonNodeFactory.instance.objectNode();
        if (type.getRawType() == List.class || type.getRawType() == OneByOne.class) {
            several.put("type", "array");
            several.set("items", schema(first));
            return several;
        }
        Type held = type.getActualTypeArguments()[1];
        if (type.getRawType() != Map.class) {
            throw new IllegalArgumentException(type.toString());
        }
        several.put("type", "object");
        several.set("additionalProperties", schema(held));
        return several;
    }

    private ObjectNode value(Class<?> type) {
        if (type == MonetaryAmount.class) {
            return ref("amount", () -> described(typed("string").put("pattern", "^-?[0-9]+(\\.[0-9]+)?$"),
                    "An amount of money with at least the decimals of the currency beside it."));
        }
        if (type == CurrencyUnit.class) {
            return ref("currency", AnswerSchema::currency);
        }
        if (type == LocalDate.class) {
            return ref("day", () -> described(typed("string").put("pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"),
                    "A day by ISO 8601."));
        }
        if (type == Instant.class || type == ZonedDateTime.class) {
            return ref("moment", () -> described(
                    typed("string").put("pattern",
                            "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}(:[0-9]{2}(\\.[0-9]+)?)?(Z|[+-][0-9]{2}:[0-9]{2})$"),
                    "A moment by ISO 8601, with the offset from UTC."));
        }
        if (type.isEnum()) {
            ObjectNode words = JsonNodeFactory.instance.objectNode();
            ArrayNode all = words.putArray("enum");
            Arrays.stream(type.getEnumConstants()).forEach(constant -> all.add(ConstantKey.of((Enum<?>) constant)));
            return words;
        }
        if (type == String.class || type == Path.class) {
            return typed("string");
        }
        if (type == boolean.class || type == Boolean.class) {
            return typed("boolean");
        }
        if (type == BigDecimal.class) {
            return typed("number");
        }
        if (WHOLE.contains(type)) {
            return typed("integer");
        }
        throw new IllegalArgumentException(type + " is none of those that the mapper is meant for");
    }

    private ObjectNode record(Class<?> type) {
        Said said = Said.of(type);
        ObjectNode schema = described(typed("object"), said.whole());
        schema.put("additionalProperties", false);
        ObjectNode properties = schema.putObject("properties");
        ArrayNode required = schema.putArray("required");
        List<RecordComponent> components = List.of(type.getRecordComponents());
        for (RecordComponent component : components) {
            boolean amount = holds(component) == MonetaryAmount.class;
            if (amount && !properties.has("currency")) {
                properties.set("currency", ref("currency", AnswerSchema::currency));
                if (components.stream().anyMatch(one -> one.getType() == MonetaryAmount.class)) {
                    required.add("currency");
                }
            }
            String key = key(component.getName());
            ObjectNode property = schema(component.getGenericType());
            properties.set(key, described(property, said.components().getOrDefault(component.getName(), "")));
            if (component.getType() != Optional.class) {
                required.add(key);
            }
        }
        return schema;
    }

    private static Type holds(RecordComponent component) {
        return component.getGenericType() instanceof ParameterizedType of && of.getRawType() == Optional.class
                ? of.getActualTypeArguments()[0]
                : component.getType();
    }

    private static Type data(Class<?> sheet) {
        return Arrays.stream(sheet.getDeclaredMethods())
                .filter(method -> method.getName().equals("data") && method.getParameterCount() == 0
                        && method.getReturnType() != Object.class)
                .findFirst().orElseThrow(() -> new IllegalArgumentException(sheet + " does not say what its data is"))
                .getGenericReturnType();
    }

    private ObjectNode ref(String name, Supplier<ObjectNode> definition) {
        if (!defs.has(name)) {
            defs.putObject(name);
            defs.set(name, definition.get());
        }
        return JsonNodeFactory.instance.objectNode().put("$ref", DEFS + name);
    }

    private static ObjectNode currency() {
        return described(typed("string").put("pattern", "^[A-Z]{3}$"), "A currency by ISO 4217.");
    }

    private static ObjectNode typed(String type) {
        return JsonNodeFactory.instance.objectNode().put("type", type);
    }

    private static ObjectNode described(ObjectNode schema, String text) {
        return text.isEmpty() ? schema : schema.put("description", text);
    }

    private static String key(String component) {
        String asked = component.replaceFirst("^(?:is|has)(?=[A-Z])", "");
        return asked.equals(component)
                ? component
                : asked.substring(0, 1).toLowerCase(Locale.ROOT) + asked.substring(1);
    }

    private static String name(Class<?> type) {
        return type.getEnclosingClass() == null
                ? type.getSimpleName()
                : name(type.getEnclosingClass()) + "." + type.getSimpleName();
    }
}
