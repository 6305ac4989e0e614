package icequill.files.paper;

import icequill.money.Amounts;
import icequill.money.Currencies;
import icequill.party.Language;
import icequill.problem.Place;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.function.Function;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.module.SimpleModule;

/** How single values of a paper are written as JSON: amounts with their currency, days and times as ISO 8601 has them. */
final class PaperValues extends SimpleModule {

    private static final long serialVersionUID = 1;

    PaperValues() {
        text(CurrencyUnit.class, CurrencyUnit::getCurrencyCode, code -> Currencies.find(code).orElseThrow());
        text(ZonedDateTime.class, ZonedDateTime::toString, ZonedDateTime::parse);
        text(LocalDate.class, LocalDate::toString, LocalDate::parse);
        text(LocalTime.class, LocalTime::toString, LocalTime::parse);
        text(ZoneId.class, ZoneId::getId, ZoneId::of);
        text(Language.class, Language::tag, PaperValues::language);
        addSerializer(MonetaryAmount.class, new AmountWriter());
        addDeserializer(MonetaryAmount.class, new AmountReader());
        addSerializer(Place.class, new PlaceWriter());
        addDeserializer(Place.class, new PlaceReader());
    }

    private <T> void text(Class<T> type, Function<T, String> write, Function<String, T> read) {
        addSerializer(type, new ValueSerializer<T>() {
            @Override
            public void serialize(T value, JsonGenerator out, SerializationContext context) {
                out.writeString(write.apply(value));
            }
        });
        addDeserializer(type, new ValueDeserializer<T>() {
            @Override
            public T deserialize(JsonParser in, DeserializationContext context) {
                return read.apply(in.getString());
            }
        });
    }

    /** Papers of earlier books name the two languages that there were. */
    private static Language language(String text) {
        return switch (text) {
        case "ENGLISH" -> Language.ENGLISH;
        case "SPANISH" -> Language.SPANISH;
        default -> new Language(text);
        };
    }

    private static final class AmountWriter extends ValueSerializer<MonetaryAmount> {
        @Override
        public void serialize(MonetaryAmount amount, JsonGenerator out, SerializationContext context) {
            out.writeStartObject();
            out.writeStringProperty("currency", amount.getCurrency().getCurrencyCode());
            out.writeName("amount");
            out.writeNumber(new BigDecimal(Amounts.plain(amount)));
            out.writeEndObject();
        }
    }

    private static final class AmountReader extends ValueDeserializer<MonetaryAmount> {
        @Override
        public MonetaryAmount deserialize(JsonParser in, DeserializationContext context) {
            JsonNode tree = context.readTree(in);
            return Amounts.of(tree.path("amount").decimalValue(),
                    Currencies.find(tree.path("currency").asString()).orElseThrow());
        }
    }

    /** Where in the shop's files a value stood is nothing to the reader of a paper. */
    private static final class PlaceWriter extends ValueSerializer<Place> {
        @Override
        public boolean isEmpty(SerializationContext context, Place place) {
            return true;
        }

        @Override
        public void serialize(Place place, JsonGenerator out, SerializationContext context) {
            out.writeNull();
        }
    }

    private static final class PlaceReader extends ValueDeserializer<Place> {
        @Override
        public Place deserialize(JsonParser in, DeserializationContext context) {
            in.skipChildren();
            return Place.NOWHERE;
        }

        @Override
        public Object getAbsentValue(DeserializationContext context) {
            return Place.NOWHERE;
        }

        @Override
        public Place getNullValue(DeserializationContext context) {
            return Place.NOWHERE;
        }
    }
}
