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
import java.util.function.Function;

/**
 * The program's words and sentences in one language; what its file does not say yet is said in English, so that a language can be added
 * sentence by sentence. Immutable.
 */
public final class Words {

    private static final Map<Language, Words> READ = new ConcurrentHashMap<>();

    private static final String ONE = ".one";

    private final Map<String, String> texts;

    private Words(Map<String, String> texts) {
        this.texts = Map.copyOf(texts);
    }

    public static Words of(Language language) {
        Words read = READ.get(language);
        return read == null
                ? READ.computeIfAbsent(language, language.equals(Language.ENGLISH)
                        ? each -> new Words(file(each))
                        : addedTo(of(Language.ENGLISH)))
                : read;
    }

    /** @throws IllegalArgumentException when there is no such key: a fault of the program, not of the input */
    String text(String key) {
        return find(key).orElseThrow(() -> new IllegalArgumentException("no words for " + key));
    }

    /** The words of a key, where there are any. */
    public Optional<String> find(String key) {
        return Optional.ofNullable(texts.get(key));
    }

    private static Function<Language, Words> addedTo(Words english) {
        return language -> {
            Map<String, String> own = file(language);
            Map<String, String> texts = new TreeMap<>(english.texts);
            // A word that is the same for one and for many has no English singular.
            texts.keySet().removeIf(key -> key.endsWith(ONE)
                    && own.containsKey(key.substring(0, key.length() - ONE.length())));
            texts.putAll(own);
            return new Words(texts);
        };
    }

    private static Map<String, String> file(Language language) {
        String resource = "/icequill/templates/words/" + language.tag() + ".properties";
        Properties properties = new Properties();
        try (InputStream stream = Words.class.getResourceAsStream(resource)) {
            properties.load(new InputStreamReader(Objects.requireNonNull(stream, resource), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(resource, unreadable);
        }
        Map<String, String> texts = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> texts.put(key, properties.getProperty(key)));
        return texts;
    }
}
