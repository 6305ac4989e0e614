package icequill.answer.json;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The part of the page on JSON that says every key of every answer, written from the schemas. */
final class AnswerPage {

    private final Map<String, ObjectNode> schemas;
    /** Answers by the records that they are. */
    private final Map<String, String> tops = new HashMap<>();

    AnswerPage(Map<String, ObjectNode> schemas) {
        this.schemas = schemas;
        schemas.forEach((name, schema) -> tops.putIfAbsent(last(schema), name));
    }

    String text() {
        Map<String, JsonNode> parts = new TreeMap<>();
        StringBuilder page = new StringBuilder("## Answers\n");
        schemas.forEach((name, schema) -> {
            page.append("\n### ").append(name).append("\n\n[Schema](json/").append(name).append(".schema.json). ");
            JsonNode top = schema.path("$defs").path(last(schema));
            if (schema.has("anyOf")) {
                page.append("One of ").append(type(schema)).append(".\n");
            } else {
                page.append(record(top));
            }
            schema.path("$defs").properties().forEach(part -> {
                if (!tops.containsKey(part.getKey())) {
                    parts.put(part.getKey(), part.getValue());
                }
            });
        });
        page.append("\n## Parts of answers\n");
        parts.forEach((name, part) -> page.append("\n### ").append(name).append("\n\n").append(record(part)));
        return page.toString();
    }

    private String record(JsonNode schema) {
        String said = schema.path("description").asString("");
        if (!schema.has("properties")) {
            return said + "\n";
        }
        StringBuilder rows = new StringBuilder(said).append("\n\n| key | type | |\n|---|---|---|\n");
        schema.path("properties").properties().forEach(key -> rows.append("| `").append(key.getKey()).append("` | ")
                .append(type(key.getValue())).append(" | ").append(about(schema, key)).append(" |\n"));
        return rows.toString().stripLeading();
    }

    private static String about(JsonNode schema, Map.Entry<String, JsonNode> key) {
        boolean always = StreamSupport.stream(schema.path("required").spliterator(), false)
                .anyMatch(name -> name.asString().equals(key.getKey()));
        String said = key.getValue().path("description").asString("");
        return (always ? "" : "may be missing" + (said.isEmpty() ? "" : ": ")) + said.replace("|", "\\|");
    }

    private String type(JsonNode schema) {
        if (schema.has("$ref")) {
            String name = tops.getOrDefault(last(schema), last(schema));
            return "[" + name + "](#" + name.toLowerCase(Locale.ROOT).replace(".", "") + ")";
        }
        if (schema.has("enum")) {
            return schema.path("enum").valueStream().map(word -> "`" + word.asString() + "`")
                    .collect(Collectors.joining(", "));
        }
        if (schema.has("anyOf")) {
            return schema.path("anyOf").valueStream().map(this::type).collect(Collectors.joining(" or "));
        }
        return switch (schema.path("type").asString("")) {
        case "array" -> "list of " + type(schema.path("items"));
        case "object" -> "keys, each with " + type(schema.path("additionalProperties"));
        case "string" -> "text";
        case "boolean" -> "true or false";
        case "integer" -> "whole number";
        default -> "number";
        };
    }

    private static String last(JsonNode schema) {
        return schema.path("$ref").asString("").replaceFirst(".*/", "");
    }
}
