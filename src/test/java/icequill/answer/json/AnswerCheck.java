package icequill.answer.json;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import icequill.files.form.FormKind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Holds JSON that a command gave against the schema that is checked in, and the forms in it against theirs. */
public final class AnswerCheck {

    private static final SchemaRegistry REGISTRY = SchemaRegistry
            .withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Path FORMS = Path.of("src/main/resources/icequill/schema");
    private static final Map<String, Schema> READ = new ConcurrentHashMap<>();

    private AnswerCheck() {
    }

    /** All that JSON has against the schema of an answer. */
    public static List<String> problems(String answer, JsonNode json) {
        List<String> problems = new ArrayList<>(errors(READ.computeIfAbsent(answer,
                name -> schema(AnswersTest.schema(name))), json));
        forms(json, problems);
        return problems;
    }

    private static void forms(JsonNode json, List<String> problems) {
        if (json.has("kind") && json.has("id") && json.path("form").isObject()) {
            problems.addAll(errors(form(json.path("kind").asString()), json.path("form")));
        } else if (json.has("format") && json.path("form").isString()) {
            problems.addAll(errors(form(json.path("form").asString()), json));
        } else {
            json.forEach(inner -> forms(inner, problems));
        }
    }

    private static List<String> errors(Schema schema, JsonNode json) {
        return schema.validate(json).stream().map(Error::toString).toList();
    }

    private static Schema form(String kind) {
        return READ.computeIfAbsent("form " + kind, name -> switch (kind) {
        case "customer" -> part("#/$defs/customer");
        case "machine" -> part("#/properties/machines/items");
        default -> schema(FORMS.resolveSibling("schema")
                .resolve(Path.of(FormKind.of(kind).orElseThrow().schema()).getFileName()));
        });
    }

    /** A part of a site's form. */
    private static Schema part(String where) {
        JsonNode site = node(FORMS.resolve("site.schema.json"));
        ObjectNode part = JsonNodeFactory.instance.objectNode();
        part.setAll((ObjectNode) site.at(where.substring(1)).deepCopy());
        part.set("$defs", site.path("$defs"));
        return REGISTRY.getSchema(part);
    }

    private static Schema schema(Path file) {
        return REGISTRY.getSchema(node(file).toString(), InputFormat.JSON);
    }

    private static JsonNode node(Path file) {
        try {
            return JsonMapper.shared().readTree(Files.readString(file));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
