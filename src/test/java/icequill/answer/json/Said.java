package icequill.answer.json;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the description above a record says of it.
 *
 * @param whole the first sentences
 * @param components by name; those that need no words are not there
 */
record Said(String whole, Map<String, String> components) {

    /** Said of a record that holds what another has for programs. */
    private static final String DATA = "What JSON shows of it.";
    private static final Pattern TAG = Pattern.compile("@param (\\w+) (.*)", Pattern.DOTALL);

    static Said of(Class<?> record) {
        Matcher above = Pattern
                .compile("/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:public |private |static |final )*(?:record|class) "
                        + record.getSimpleName() + "\\b", Pattern.DOTALL)
                .matcher(source(record));
        if (!above.find()) {
            return new Said("", Map.of());
        }
        String[] parts = plain(above.group(1)).split("(?=@param )", -1);
        Map<String, String> components = new HashMap<>();
        for (int i = 1; i < parts.length; i++) {
            Matcher tag = TAG.matcher(parts[i].strip());
            if (tag.matches()) {
                components.put(tag.group(1), tag.group(2).strip());
            }
        }
        String whole = parts[0].strip();
        return new Said(whole.startsWith(DATA) && record.getEnclosingClass() != null
                ? of(record.getEnclosingClass()).whole() + whole.substring(DATA.length()).strip()
                : whole, components);
    }

    private static String plain(String description) {
        return description.replaceAll("(?m)^\\s*\\* ?", "").replaceAll("\\{@(?:code|link) #?([^}]*)}", "`$1`")
                .replaceAll("\\s+", " ");
    }

    private static String source(Class<?> record) {
        String top = record.getName().replaceFirst("\\$.*", "").replace('.', '/');
        try {
            return Files.readString(Path.of("src/main/java", top + ".java"));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
