package icequill.office.register;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds the files of a shop folder that still name a customer: forms and lists by what they say, drafts by the forms they were made
 * of, and copies of the book, which hold everybody.
 *
 * @param ids of himself, his sites, visits and payments
 * @param names of himself and of whom his bills go to
 */
record NamingFiles(Path folder, List<String> ids, List<String> names) {

    /** What is issued stays, and the book itself was blanked; the rest names nobody. */
    private static final List<String> PASSED = List.of("book/", "papers/issued/", "pricing/", "templates/");
    private static final List<String> TEXTS = List.of(".yaml", ".yml", ".csv", ".json", ".html", ".xml", ".ics", ".txt",
            ".md", ".eml");
    private static final String BACKUP = ".backup";
    private static final long MOST_BYTES = 50_000_000;
    private static final int SHORTEST_NAME = 3;
    /** What a note leaves out of a company's name. */
    private static final Pattern COMPANY = Pattern
            .compile(",?\\s+(?:LLC|LLP|Inc|Ltd|Corp|Co|GmbH|SA|SL|S\\.A|S\\.L)\\.?$");

    /** From the folder on, by name. */
    List<String> found() {
        List<String> all = all();
        Set<String> found = new TreeSet<>(all.stream().filter(this::names).toList());
        List<String> stems = new ArrayList<>(ids);
        found.stream().filter(name -> !name.startsWith("papers/")).map(NamingFiles::stem).forEach(stems::add);
        all.stream().filter(name -> stems.stream().anyMatch(stem -> isWord(stem, stem(name)))).forEach(found::add);
        return List.copyOf(found);
    }

    private List<String> all() {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .filter(name -> PASSED.stream().noneMatch(name::startsWith)).toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private boolean names(String name) {
        if (name.endsWith(BACKUP)) {
            return true;
        }
        Path file = folder.resolve(name);
        try {
            if (TEXTS.stream().noneMatch(name::endsWith)) {
                return false;
            }
            if (Files.size(file) > MOST_BYTES) {
                return true;
            }
            String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8).toLowerCase(Locale.ROOT);
            return names.stream().map(known -> COMPANY.matcher(known).replaceFirst(""))
                    .filter(known -> known.length() >= SHORTEST_NAME)
                    .anyMatch(known -> text.contains(known.toLowerCase(Locale.ROOT)))
                    || ids.stream().anyMatch(id -> isWord(id, text));
        } catch (IOException unreadable) {
            // It cannot be ruled out.
            return true;
        }
    }

    private static String stem(String name) {
        String last = name.substring(name.lastIndexOf('/') + 1);
        int dot = last.lastIndexOf('.');
        return dot > 0 ? last.substring(0, dot) : last;
    }

    private static boolean isWord(String word, String text) {
        return Pattern.compile("(?<![a-z0-9])" + Pattern.quote(word) + "(?![a-z0-9])").matcher(text).find();
    }
}
