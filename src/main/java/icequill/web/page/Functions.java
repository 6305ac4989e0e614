package icequill.web.page;

import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.utility.DeepUnwrap;
import icequill.money.Amounts;
import icequill.render.words.Sentences;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import javax.money.MonetaryAmount;
import org.jspecify.annotations.Nullable;

/** What templates may call: words, days, times and amounts as their reader writes them. */
record Functions(Reader reader) {

    private static final String PREFIX = "page.";

    /** By the names that templates have for them. */
    Map<String, TemplateMethodModelEx> byName() {
        return Map.ofEntries(Map.entry("word", arguments -> word(PREFIX, arguments)),
                Map.entry("common", arguments -> word("", arguments)),
                Map.entry("day", arguments -> day(only(arguments))),
                Map.entry("understood", arguments -> understood(String.valueOf(only(arguments)))),
                Map.entry("time", arguments -> time(only(arguments))),
                Map.entry("lasting", arguments -> reader.sentences()
                        .duration(Integer.parseInt(String.valueOf(only(arguments))))),
                Map.entry("money", arguments -> amount(only(arguments), true)),
                Map.entry("figure", arguments -> amount(only(arguments), false)),
                Map.entry("plain", arguments -> plain(only(arguments))),
                Map.entry("number", arguments -> text(only(arguments))),
                Map.entry("sentence", arguments -> Sentences.capitalized(String.valueOf(only(arguments)))),
                Map.entry("told",
                        arguments -> Told.in(reader.language()).of(String.valueOf(only(arguments))).orElse(null)));
    }

    private static @Nullable Object only(List<?> arguments) throws TemplateModelException {
        return DeepUnwrap.unwrap((TemplateModel) arguments.getFirst());
    }

    /** The sentence under a key; for a number as its first detail, that of one thing where it is one. */
    private String word(String prefix, List<?> arguments) throws TemplateModelException {
        String key = prefix + only(arguments);
        String[] details = new String[arguments.size() - 1];
        for (int i = 0; i < details.length; i++) {
            Object detail = DeepUnwrap.unwrap((TemplateModel) arguments.get(i + 1));
            details[i] = text(detail);
        }
        String one = key + ".one";
        boolean isOne = details.length > 0 && details[0].equals("1")
                && reader.sentences().formats().words().find(one).isPresent();
        return reader.sentences().word(isOne ? one : key, details);
    }

    private String text(@Nullable Object detail) {
        return switch (detail) {
        case LocalDate day -> day(day);
        case ZonedDateTime moment -> day(moment) + ", " + time(moment);
        case MonetaryAmount sum -> amount(sum, true);
        case BigDecimal number -> reader.sentences().formats().number(number);
        case null, default -> String.valueOf(detail);
        };
    }

    private String day(@Nullable Object day) {
        return reader.sentences().formats().day(switch (day) {
        case LocalDate date -> date;
        case ZonedDateTime moment -> moment.toLocalDate();
        case Instant moment -> moment.atZone(reader.zone()).toLocalDate();
        case null, default -> throw new IllegalArgumentException("no day: " + day);
        });
    }

    /** A day that was typed, with its weekday; no letters while it cannot be read. */
    private String understood(String typed) {
        return TypedDay.of(typed, reader, "").found()
                .map(day -> Sentences.capitalized(reader.sentences().formats().dayOfWeek(day))).orElse("");
    }

    private String time(@Nullable Object time) {
        return reader.sentences().formats().time(switch (time) {
        case ZonedDateTime moment -> moment.toLocalTime();
        case Instant moment -> moment.atZone(reader.zone()).toLocalTime();
        case null, default -> throw new IllegalArgumentException("no time: " + time);
        });
    }

    /** With all decimals that it has: a price of a unit may have four. */
    private String plain(@Nullable Object amount) {
        if (!(amount instanceof MonetaryAmount sum)) {
            throw new IllegalArgumentException("no amount: " + amount);
        }
        BigDecimal number = new BigDecimal(Amounts.plain(sum));
        return reader.sentences().formats().number(number, number.scale());
    }

    /** @param named whether its currency is said */
    private String amount(@Nullable Object amount, boolean named) {
        if (!(amount instanceof MonetaryAmount sum)) {
            throw new IllegalArgumentException("no amount: " + amount);
        }
        return (named ? sum.getCurrency().getCurrencyCode() + "\u00a0" : "")
                + reader.sentences().formats().amount(sum);
    }
}
