package icequill.oracle;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The keys and values of a file, by the library alone. */
record Yaml(Map<?, ?> map) {

    static Yaml of(Path file) throws IOException {
        return new Yaml((Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(Files.readString(file)));
    }

    boolean has(String key) {
        return map.containsKey(key);
    }

    String text(String key) {
        return text(key, "");
    }

    String text(String key, String otherwise) {
        return has(key) ? String.valueOf(map.get(key)) : otherwise;
    }

    boolean is(String key) {
        return Boolean.TRUE.equals(map.get(key));
    }

    BigDecimal number(String key) {
        return new BigDecimal(text(key));
    }

    Optional<BigDecimal> maybe(String key) {
        return has(key) ? Optional.of(number(key)) : Optional.empty();
    }

    Yaml child(String key) {
        return new Yaml((Map<?, ?>) map.get(key));
    }

    /** A number, or the one of a band. */
    BigDecimal byBand(String key, String band) {
        return map.get(key) instanceof Map<?, ?> ? child(key).number(band) : number(key);
    }

    List<Yaml> list(String key) {
        return map.get(key) instanceof List<?> items
                ? items.stream().map(item -> new Yaml((Map<?, ?>) item)).toList()
                : List.of();
    }

    List<String> texts(String key) {
        return map.get(key) instanceof List<?> items ? items.stream().map(String::valueOf).toList() : List.of();
    }

    /** The entry of a list that has the id. */
    Yaml named(String key, String id) {
        return list(key).stream().filter(entry -> entry.text("id").equals(id)).findFirst().orElseThrow();
    }
}
