package icequill.files.yaml;

import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Writes JSON text. */
public final class Json {

    private static final JsonMapper MAPPER = JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private static final JsonMapper COMPACT = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private Json() {
    }

    /** What JSON text of keys and values says; nothing of a text without letters. */
    public static Map<String, Object> map(String text) {
        return text.isBlank() ? Map.of() : COMPACT.readValue(text, new TypeReference<LinkedHashMap<String, Object>>() {
        });
    }

    /** A value as JSON on one line; of maps, lists, texts, truths and numbers, which are written out in full. */
    public static String line(Object value) {
        return COMPACT.writeValueAsString(value);
    }

    /**
     * A value as indented JSON.
     *
     * @param value of maps, lists, texts, truths and whole numbers; the order of a map's keys is kept
     */
    public static String text(Object value) {
        return MAPPER.writeValueAsString(value);
    }
}
