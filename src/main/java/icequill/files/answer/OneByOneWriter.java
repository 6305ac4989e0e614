package icequill.files.answer;

import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ser.std.StdSerializer;

/** Writes a list of which each entry stands on a line of its own. */
final class OneByOneWriter extends StdSerializer<OneByOne<?>> {

    OneByOneWriter() {
        super(OneByOne.class);
    }

    @Override
    public void serialize(OneByOne<?> list, JsonGenerator json, SerializationContext context) {
        json.writeStartArray();
        list.each(entry -> {
            json.writeRaw(System.lineSeparator());
            context.writeValue(json, entry);
        });
        json.writeEndArray();
    }
}
