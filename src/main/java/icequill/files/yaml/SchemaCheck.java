package icequill.files.yaml;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.NodePath;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Holds a file against its JSON Schema and says in our words what differs. Safe for use by many threads. */
public final class SchemaCheck {

    private static final SchemaRegistry REGISTRY = SchemaRegistry
            .withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Map<String, Schema> READ = new ConcurrentHashMap<>();
    private static final Remembered<Checked, List<Problem>> KNOWN = new Remembered<>(Remembered.FILES);

    /** A tree that was held against a schema: this one, since to compare it with another takes as long as the check. */
    private record Checked(Tree tree, String schema) {

        @Override
        @SuppressWarnings("ReferenceEquality")
        public boolean equals(@Nullable Object other) {
            return other instanceof Checked(Tree same, String by) && tree == same && schema.equals(by);
        }

        @Override
        public int hashCode() {
            return 31 * System.identityHashCode(tree) + schema.hashCode();
        }
    }

    private SchemaCheck() {
    }

    /**
     * All that a tree has against its schema.
     *
     * @param schema its resource, from the root of the class path
     */
    public static List<Problem> check(Tree tree, String schema) {
        return KNOWN.of(new Checked(tree, schema),
                () -> List.copyOf(check(tree, READ.computeIfAbsent(schema, SchemaCheck::read))));
    }

    /**
     * The same for what a schema says of one of its keys.
     *
     * @param key where in the schema, such as {@code /properties/customer}; empty for the whole
     * @param without keys that may be missing all the same
     */
    public static List<Problem> check(Tree tree, String schema, String key, Set<String> without) {
        Schema whole = READ.computeIfAbsent(schema, SchemaCheck::read);
        return check(tree, READ.computeIfAbsent(schema + "#" + key + without,
                name -> part(whole.getSchemaNode(), key, without)));
    }

    private static Schema part(JsonNode whole, String key, Set<String> without) {
        ObjectNode part = ((ObjectNode) whole.at(key)).deepCopy();
        part.set("$defs", whole.path("$defs"));
        ArrayNode required = JsonNodeFactory.instance.arrayNode();
        part.path("required").forEach(name -> {
            if (!without.contains(name.asString())) {
                required.add(name);
            }
        });
        part.set("required", required);
        return REGISTRY.getSchema(part);
    }

    private static List<Problem> check(Tree tree, Schema rules) {
        List<Problem> problems = new ArrayList<>();
        for (Error error : rules.validate(TreeJson.node(tree))) {
            Tree at = find(tree, error.getInstanceLocation());
            JsonNode broken = parent(rules.getSchemaNode(), error.getSchemaLocation().getFragment());
            if (!isMisspelled(error, broken.path("properties"), at)) {
                problems.add(problem(error, rules.getSchemaNode(), broken, at));
            }
        }
        return problems;
    }

    private static Schema read(String resource) {
        try (InputStream stream = SchemaCheck.class.getResourceAsStream(resource)) {
            byte[] bytes = Objects.requireNonNull(stream, resource).readAllBytes();
            return REGISTRY.getSchema(new String(bytes, StandardCharsets.UTF_8), InputFormat.JSON);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(resource, unreadable);
        }
    }

    /** Whether a key that is missing stands there with a wrong letter, and so is reported already. */
    private static boolean isMisspelled(Error error, JsonNode properties, Tree at) {
        return error.getKeyword().equals("required") && at instanceof Tree.Branch branch
                && branch.entries().keySet().stream().filter(key -> !properties.has(key))
                        .flatMap(key -> Problem.nearest(key, properties.propertyNames()).stream())
                        .anyMatch(name -> name.equals(error.getProperty()));
    }

    private static Problem problem(Error error, JsonNode rules, JsonNode broken, Tree at) {
        String keyword = error.getKeyword();
        String key = Objects.requireNonNullElse(error.getProperty(), "");
        String wanted = broken.path("description").asString("");
        return switch (keyword) {
        case "additionalProperties", "propertyNames" -> unknownKey(at, key, broken.path("properties"));
        case "required" ->
            new Problem(Code.MISSING, at.place(), "\"" + key + "\" is missing", described(rules, broken, key));
        case "type" -> new Problem(Code.WRONG_TYPE, at.place(), found(at, broken), typed(broken, wanted));
        case "enum", "const" -> notAllowed(at, broken, wanted);
        case "minimum", "maximum" -> new Problem(Code.OUT_OF_RANGE, at.place(), found(at, broken), wanted);
        case "pattern", "minLength", "maxLength" ->
            new Problem(Code.NOT_ALLOWED, at.place(), found(at, broken), wanted);
        case "minItems", "minProperties" -> new Problem(Code.MISSING, at.place(), "nothing is listed here",
                "at least " + broken.path(keyword).asString(""));
        case "maxItems", "maxProperties" -> new Problem(Code.TOO_LARGE, at.place(), "too many entries",
                "at most " + broken.path(keyword).asString(""));
        default -> new Problem(Code.NOT_ALLOWED, at.place(), error.getMessage(), wanted);
        };
    }

    private static Problem unknownKey(Tree at, String key, JsonNode properties) {
        Place place = at instanceof Tree.Branch branch ? branch.keys().getOrDefault(key, at.place()) : at.place();
        return new Problem(Code.UNKNOWN_KEY, place, "there is no key \"" + key + "\" here",
                Problem.oneOf(key, new TreeSet<>(properties.propertyNames())));
    }

    private static Problem notAllowed(Tree at, JsonNode broken, String wanted) {
        List<String> allowed = new ArrayList<>();
        broken.path("enum").forEach(value -> allowed.add(value.asString("")));
        if (allowed.isEmpty()) {
            return new Problem(Code.NOT_ALLOWED, at.place(), found(at, broken), wanted);
        }
        String text = at instanceof Tree.Leaf leaf ? leaf.text() : "";
        return new Problem(Code.NOT_ALLOWED, at.place(), found(at, broken), Problem.oneOf(text, allowed));
    }

    /** What stands there, unless it is, or was to hold, what the schema does not let be shown ({@code writeOnly}): a password. */
    private static String found(Tree at, JsonNode rules) {
        boolean isHidden = Stream.concat(Stream.of(rules), rules.path("properties").valueStream())
                .anyMatch(rule -> rule.path("writeOnly").asBoolean(false));
        return isHidden ? "found something else" : found(at);
    }

    private static String found(Tree at) {
        return switch (at) {
        case Tree.Branch branch -> "found keys and values";
        case Tree.Row row -> "found a list";
        case Tree.Leaf leaf -> switch (leaf.kind()) {
        case TEXT -> "found the text \"" + shortened(leaf.text()) + "\"";
        case NUMBER -> "found the number " + shortened(leaf.text());
        case TRUTH -> "found " + leaf.text();
        case NOTHING -> "found nothing";
        };
        };
    }

    private static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 60) + "…";
    }

    private static String typed(JsonNode broken, String wanted) {
        if (broken.path("type").isArray()) {
            return wanted;
        }
        String type = switch (broken.path("type").asString("")) {
        case "object" -> "keys and values";
        case "array" -> "a list";
        case "number" -> "a number";
        case "integer" -> "a whole number";
        case "boolean" -> "true or false";
        default -> "text; put it in quotes";
        };
        return wanted.isEmpty() ? type : type + ": " + wanted;
    }

    /** What the missing key would hold. */
    private static String described(JsonNode rules, JsonNode parent, String key) {
        JsonNode property = parent.path("properties").path(key);
        String own = property.path("description").asString("");
        String target = property.path("$ref").asString("");
        return own.isEmpty() && !target.isEmpty()
                ? rules.at(target.substring(1)).path("description").asString("")
                : own;
    }

    /** The rules that hold the broken keyword. */
    private static JsonNode parent(JsonNode rules, NodePath location) {
        JsonNode node = rules;
        for (int i = 0; i < location.getNameCount() - 1; i++) {
            node = location.getElement(i) instanceof Integer index
                    ? node.path(index)
                    : node.path(String.valueOf(location.getElement(i)));
        }
        return node;
    }

    private static Tree find(Tree tree, NodePath location) {
        Tree found = tree;
        for (int i = 0; i < location.getNameCount(); i++) {
            found = switch (found) {
            case Tree.Branch branch -> branch.entries().getOrDefault(String.valueOf(location.getElement(i)), branch);
            case Tree.Row row -> row.items().get((Integer) location.getElement(i));
            case Tree.Leaf leaf -> leaf;
            };
        }
        return found;
    }
}
