package icequill.web.page;

import icequill.files.disk.Hash;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The styles and scripts of the pages. Each lies at an address made from its content, so that browsers may keep it for good. */
public final class Assets {

    private static final String FOLDER = "/icequill/web/assets/";
    private static final List<String> NAMES = List.of("office.css", "office.js", "office.svg");
    private static final Map<String, String> TYPES = Map.of("css", "text/css", "js", "text/javascript", "svg",
            "image/svg+xml");
    private static final int HASH = 16;

    private final Map<String, Asset> byPath;
    private final Map<String, String> paths;

    /** One of them. */
    public record Asset(String text, String type) {}

    private Assets(Map<String, Asset> byPath, Map<String, String> paths) {
        this.byPath = Map.copyOf(byPath);
        this.paths = Map.copyOf(paths);
    }

    /** All that the program brings. */
    public static Assets shipped() {
        Map<String, Asset> byPath = new LinkedHashMap<>();
        Map<String, String> paths = new LinkedHashMap<>();
        for (String name : NAMES) {
            String text = text(name);
            String path = "/assets/" + Hash.of(text.getBytes(StandardCharsets.UTF_8)).substring(0, HASH) + "/" + name;
            byPath.put(path, new Asset(text, TYPES.getOrDefault(name.replaceFirst(".*[.]", ""), "")));
            paths.put(name, path);
        }
        return new Assets(byPath, paths);
    }

    /** Where one lies, by its name. */
    public String path(String name) {
        return Objects.requireNonNull(paths.get(name), name);
    }

    public Optional<Asset> at(String path) {
        return Optional.ofNullable(byPath.get(path));
    }

    private static String text(String name) {
        try (InputStream stream = Assets.class.getResourceAsStream(FOLDER + name)) {
            return new String(Objects.requireNonNull(stream, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(name, unreadable);
        }
    }
}
