package icequill.files.yaml;

import java.math.BigDecimal;
import java.util.function.Function;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What a YAML file says, as JSON on one line, which the reader of YAML reads back as the same. */
public final class TreeJson {

    private static final JsonMapper MAPPER = JsonMapper.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private TreeJson() {
    }

    /** Numbers are written as they were: a pH of 7.0 says more than one of 7. */
    public static String text(Tree tree) {
        return MAPPER.writeValueAsString(node(tree, NODES::numberNode));
    }

    /** As a schema reads it: whole numbers without a fraction, however the file writes them. */
    static JsonNode node(Tree tree) {
        return node(tree, TreeJson::number);
    }

    private static JsonNode node(Tree tree, Function<BigDecimal, JsonNode> number) {
        return switch (tree) {
        case Tree.Branch branch -> {
            ObjectNode object = NODES.objectNode();
            branch.entries().forEach((key, value) -> object.set(key, node(value, number)));
            yield object;
        }
        case Tree.Row row -> {
            ArrayNode array = NODES.arrayNode();
            row.items().forEach(item -> array.add(node(item, number)));
            yield array;
        }
        case Tree.Leaf leaf -> switch (leaf.kind()) {
        case TEXT -> NODES.stringNode(leaf.text());
        case NUMBER -> leaf.number().map(number).orElseGet(() -> NODES.stringNode(leaf.text()));
        case TRUTH -> NODES.booleanNode(Boolean.parseBoolean(leaf.text()));
        case NOTHING -> NODES.nullNode();
        };
        };
    }

    private static JsonNode number(BigDecimal number) {
        return number.stripTrailingZeros().scale() <= 0
                ? NODES.numberNode(number.toBigInteger())
                : NODES.numberNode(number);
    }
}
