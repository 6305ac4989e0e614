package icequill.files.yaml;

import java.math.BigDecimal;
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

    public static String text(Tree tree) {
        return MAPPER.writeValueAsString(node(tree));
    }

    /** Whole numbers are written without a fraction, however the file writes them. */
    static JsonNode node(Tree tree) {
        return switch (tree) {
        case Tree.Branch branch -> {
            ObjectNode object = NODES.objectNode();
            branch.entries().forEach((key, value) -> object.set(key, node(value)));
            yield object;
        }
        case Tree.Row row -> {
            ArrayNode array = NODES.arrayNode();
            row.items().forEach(item -> array.add(node(item)));
            yield array;
        }
        case Tree.Leaf leaf -> switch (leaf.kind()) {
        case TEXT -> NODES.stringNode(leaf.text());
        case NUMBER -> leaf.number().map(TreeJson::number).orElseGet(() -> NODES.stringNode(leaf.text()));
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
