package icequill.render.words;

import icequill.party.Language;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** The program's words and sentences in one language. Immutable. */
public final class Words {

    private static final Map<Language, Words> READ = new ConcurrentHashMap<>();

    private final Map<String, String> texts;

    private Words(Map<String, String> texts) {
        this.texts = texts;
    }

    public static Words of(Language language) {
        return READ.computeIfAbsent(language, Words::read);
    }

    /** @throws IllegalArgumentException when there is no such key: a fault of the program, not of the input */
    String text(String key) {
        return find(key).orElseThrow(() -> new IllegalArgumentException("no words for " + key));
    }

    Optional<String> find(String key) {
        return Optional.ofNullable(texts.get(key));
    }

    public Map<String, String> all() {
        return texts;
    }

    private static Words read(Language language) {
        String resource = "/icequill/templates/words/" + language.tag() + ".properties";
        Properties properties = new Properties();
        try (InputStream stream = Words.class.getResourceAsStream(resource)) {
            properties.load(new InputStreamReader(Objects.requireNonNull(stream, resource), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(resource, unreadable);
        }
        Map<String, String> texts = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> texts.put(key, properties.getProperty(key)));
        return new Words(Map.copyOf(texts));
    }
}
