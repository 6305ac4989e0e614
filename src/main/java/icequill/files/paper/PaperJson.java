package icequill.files.paper;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import icequill.document.Paper;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Papers as JSON, whole: what was written can be read back as the same paper. Places in the shop's files are left out. */
public final class PaperJson {

    /** The version of the layout. */
    private static final int FORMAT = 1;
    /** Of what a paper itself says, within its envelope. */
    private static final int OWN_LEVEL = 2;

    private static final JsonMapper MAPPER = mapper();

    private static final ObjectWriter COMPACT = MAPPER.writer().without(SerializationFeature.INDENT_OUTPUT);

    /** The file around a paper. */
    private record Envelope(int format, Paper paper) {}

    /** The kind of a value stands in its {@code is}. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.SIMPLE_NAME, property = "is")
    private interface Kinds {}

    private PaperJson() {
    }

    /** The paper as indented JSON; the same paper gives the same text. */
    public static String write(Paper paper) {
        return MAPPER.writeValueAsString(new Envelope(FORMAT, paper)) + "\n";
    }

    /** The same on one line, to be stored. */
    public static String compact(Paper paper) {
        return COMPACT.writeValueAsString(new Envelope(FORMAT, paper));
    }

    /**
     * The paper that {@link #write} or {@link #compact} wrote, or a problem when the text is anything else.
     *
     * @param name of the file, for a problem's place
     */
    public static Validated<Paper> read(String json, String name) {
        try {
            return Validated.valid(MAPPER.readValue(json, Envelope.class).paper());
        } catch (JacksonException broken) {
            int line = broken.getLocation() == null ? 0 : Math.max(0, broken.getLocation().getLineNr());
            return Validated.invalid(new Problem(Code.UNREADABLE, new Place(name, line, ""),
                    "not a paper of this program: " + broken.getOriginalMessage(), "JSON that it wrote itself"));
        }
    }

    /**
     * One text of a paper, without making the whole of it.
     *
     * @param json that {@link #write} or {@link #compact} wrote
     * @param key of the paper's own level; empty where it has none of it
     */
    public static Optional<String> text(String json, String key) {
        try (JsonParser parser = MAPPER.createParser(json)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                boolean isOwn = parser.streamReadContext().getNestingDepth() == OWN_LEVEL;
                if (isOwn && token == JsonToken.VALUE_STRING && parser.currentName().equals(key)) {
                    return Optional.of(parser.getString());
                }
                if (!isOwn && parser.streamReadContext().getNestingDepth() > OWN_LEVEL) {
                    parser.skipChildren();
                }
            }
            return Optional.empty();
        }
    }

    private static JsonMapper mapper() {
        JsonMapper.Builder builder = JsonMapper.builder().addModule(new PaperValues())
                .changeDefaultVisibility(all -> all.withVisibility(
                        PropertyAccessor.ALL, Visibility.NONE)
                        .withFieldVisibility(Visibility.ANY).withCreatorVisibility(Visibility.ANY))
                .changeDefaultPropertyInclusion(all -> all.withValueInclusion(JsonInclude.Include.NON_ABSENT))
                .withConfigOverride(Place.class,
                        place -> place.setInclude(JsonInclude.Value.construct(JsonInclude.Include.NON_EMPTY, null)))
                .enable(SerializationFeature.INDENT_OUTPUT, SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
                .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
                .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS,
                        DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES);
        for (Class<?> family : new Class<?>[]{Figure.class, Fact.class, Paper.class}) {
            builder.addMixIn(family, Kinds.class);
            members(family).forEach(builder::registerSubtypes);
        }
        return builder.build();
    }

    private static Stream<Class<?>> members(Class<?> family) {
        Class<?>[] permitted = family.getPermittedSubclasses();
        return permitted == null ? Stream.of(family) : Arrays.stream(permitted).flatMap(PaperJson::members);
    }
}
