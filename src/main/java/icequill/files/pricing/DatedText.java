package icequill.files.pricing;

import icequill.files.yaml.YamlText;
import icequill.files.yaml.YamlText.Value;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A file of rates as text, and the days on which it holds.
 *
 * @param name within the folder
 * @param until the first day on which it does not hold any more
 */
record DatedText(String name, YamlText text, String kind, LocalDate begin, Optional<LocalDate> until) {

    /** Those of a version, by kind and day; what has no days is none. */
    static List<DatedText> all(RatesVersion version) {
        return version.files().keySet().stream().filter(name -> name.startsWith("pricing/"))
                .flatMap(name -> of(name, YamlText.of(version.text(name).orElseThrow())).stream())
                .sorted(Comparator.comparing(DatedText::kind).thenComparing(DatedText::begin)).toList();
    }

    private static Optional<DatedText> of(String name, YamlText text) {
        String kind = text.value("kind").map(Value::text).orElse("");
        return text.value("effective.from").map(Value::text).map(LocalDate::parse)
                .map(begin -> new DatedText(name, text, kind, begin,
                        text.value("effective.until").map(Value::text).map(LocalDate::parse)));
    }

    boolean endsBy(LocalDate day) {
        return until.filter(end -> !end.isAfter(day)).isPresent();
    }

    boolean holds(LocalDate day) {
        return !begin.isAfter(day) && !endsBy(day);
    }

    boolean isOf(PriceGroup group, Value value) {
        return group.kind().equals(kind) && group.holds(value.path(), key -> beside(value, key));
    }

    /** The prices of a group, by the ids of what they belong to. */
    Map<String, BigDecimal> prices(PriceGroup group) {
        return text.values().stream().filter(value -> isOf(group, value))
                .collect(Collectors.toMap(this::named, value -> new BigDecimal(value.text())));
    }

    /** Whether a price of the group is another one there than here. */
    boolean differs(DatedText other, PriceGroup group) {
        Map<String, BigDecimal> others = other.prices(group);
        return prices(group).entrySet().stream().anyMatch(price -> Optional.ofNullable(others.get(price.getKey()))
                .filter(found -> found.compareTo(price.getValue()) != 0).isPresent());
    }

    private String beside(Value value, String key) {
        return text.value(value.path().replaceFirst("[^.]+$", key)).map(Value::text).orElse("");
    }

    /** The path with the entry's id where it has one, since an entry may stand elsewhere in another file. */
    private String named(Value value) {
        String entry = value.path().replaceFirst("].*", "]");
        return text.value(entry + ".id").map(id -> id.text() + value.path().substring(entry.length()))
                .orElse(value.path());
    }
}
