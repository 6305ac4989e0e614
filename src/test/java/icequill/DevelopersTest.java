package icequill;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What contributors read names what is there, and the first page stays short. */
class DevelopersTest {

    private static final Path FIRST = Path.of("DEVELOPERS.md");
    private static final int MOST_CHARACTERS = 9_000;

    private static final List<Path> SOURCES = List.of(Path.of("src/main/java"), Path.of("src/test/java"));
    /** All Java files, by the simple name of their class. */
    private static final Map<String, List<Path>> CLASSES = classes();

    private static final Pattern QUOTED = Pattern.compile("`([^`\n]+)`");
    private static final Pattern PACKAGED = Pattern.compile("\\bicequill(\\.[a-zA-Z]\\w*)+");
    private static final Pattern CLASS = Pattern.compile("([A-Z]\\w*[a-z]\\w*)(?:\\.(\\w+).*)?");
    private static final Pattern FILE = Pattern.compile("(?:src|pricing|templates)/[\\w./-]+");
    private static final Pattern TESTS = Pattern.compile("-Dtest='?([\\w,]+)");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)]+)\\)");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.+)$");

    static Stream<Path> pages() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/docs"))) {
            return Stream.concat(Stream.of(FIRST, Path.of("README.md")),
                    files.filter(file -> file.toString().endsWith(".md")).sorted().toList().stream());
        }
    }

    @Test
    void firstPage_isShort() throws IOException {
        assertThat(Files.readString(FIRST)).hasSizeLessThan(MOST_CHARACTERS);
    }

    @Test
    void firstPage_hasEveryRoom() throws IOException {
        try (Stream<Path> rooms = Files.list(Path.of("src/main/java/icequill"))) {
            String page = Files.readString(FIRST);

            assertThat(rooms.filter(Files::isDirectory).map(room -> room.getFileName().toString()))
                    .allSatisfy(room -> assertThat(page).contains("\n| `" + room + "` | "));
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void page_namesOnlyWhatIsThere(Path page) throws IOException {
        assertThat(missing(page, Files.readString(page))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            `icequill.pricer.Prizer`                  | icequill.pricer.Prizer
            see `-DrunsOf=icequill.prizer` for it     | icequill.prizer
            `Prizer`                                  | Prizer
            `Pricer.prize(visit)`                     | Pricer.prize
            `src/docs/none.md`                        | src/docs/none.md
            mvn -Dtest='PrinterTest,PrizerTest'       | PrizerTest
            [it](src/docs/none.md)                    | src/docs/none.md
            [it](src/docs/recipes.md#a-prize)         | src/docs/recipes.md#a-prize
            """)
    void missingName_isFound(String text, String missing) throws IOException {
        assertThat(missing(FIRST, text)).containsExactly(missing);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            `icequill.pricer.Pricer`, `icequill.pricer`, `Pricer`, `Pricer.price(visit)`
            `src/docs/recipes.md`, `INV-2026-00012`, `K`
            [it](src/docs/recipes.md#a-rate-and-its-test), [it](https://example.org/none)
            """)
    void namesThatAreThere_areNot(String text) throws IOException {
        assertThat(missing(FIRST, text)).isEmpty();
    }

    private static List<String> missing(Path page, String text) throws IOException {
        List<String> missing = new ArrayList<>();
        PACKAGED.matcher(text).results().map(MatchResult::group).filter(name -> !isThere(name)).forEach(missing::add);
        QUOTED.matcher(text).results().map(found -> found.group(1)).forEach(quoted -> {
            Matcher named = CLASS.matcher(quoted);
            if (named.matches() && !has(named.group(1), named.group(2))) {
                missing.add(named.group(2) == null ? named.group(1) : named.group(1) + "." + named.group(2));
            }
            if (FILE.matcher(quoted).matches() && !Files.exists(Path.of(quoted))) {
                missing.add(quoted);
            }
        });
        TESTS.matcher(text).results().flatMap(found -> Stream.of(found.group(1).split(",")))
                .filter(test -> !CLASSES.containsKey(test)).forEach(missing::add);
        for (String link : LINK.matcher(text).results().map(found -> found.group(1)).toList()) {
            if (!leads(page, link)) {
                missing.add(link);
            }
        }
        return missing;
    }

    /** Whether there is a package or a class of this full name. */
    private static boolean isThere(String name) {
        Path path = Path.of(name.replace('.', '/'));
        return SOURCES.stream().anyMatch(root -> Files.isDirectory(root.resolve(path))
                || Files.exists(root.resolve(path.resolveSibling(path.getFileName() + ".java"))));
    }

    /** Whether there is a class of this simple name, and the member in it. */
    private static boolean has(String type, @Nullable String member) {
        return CLASSES.getOrDefault(type, List.of()).stream().anyMatch(file -> member == null
                || Pattern.compile("\\b" + member + "\\b").matcher(read(file)).find());
    }

    private static boolean leads(Path page, String link) throws IOException {
        if (link.contains(":")) {
            return true;
        }
        List<String> parts = List.of(link.split("#", 2));
        Path target = parts.getFirst().isEmpty() ? page : page.resolveSibling(parts.getFirst());
        return Files.exists(target) && (parts.size() == 1 || HEADING.matcher(Files.readString(target)).results()
                .map(heading -> anchor(heading.group(1))).anyMatch(parts.getLast()::equals));
    }

    /** What a heading is linked by, as code hosts reckon it. */
    private static String anchor(String heading) {
        return heading.toLowerCase(Locale.ROOT).replaceAll("[^\\w -]", "").replace(' ', '-');
    }

    private static Map<String, List<Path>> classes() {
        return SOURCES.stream().flatMap(DevelopersTest::files)
                .collect(Collectors.groupingBy(file -> file.getFileName().toString().replace(".java", "")));
    }

    private static Stream<Path> files(Path root) {
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList().stream();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
