package icequill.files;

import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Writes JSON text. */
public final class Json {

    private static final JsonMapper MAPPER = JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private Json() {
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
