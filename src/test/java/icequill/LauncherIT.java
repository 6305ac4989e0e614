package icequill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged program: started by its own runtime, moved, linked, and as the README shows it. */
class LauncherIT {

    private static final Path IMAGE = Path.of(System.getProperty("icequill.image"));
    private static final Path TRAINED = Path.of(System.getProperty("icequill.trained"));

    @TempDir
    private static Path common;

    /** With a shop of the demo's rates and visits, which no test changes. */
    @BeforeAll
    static void shop() throws Exception {
        assertThat(shell(common, "icequill new shop --demo").status()).isZero();
    }

    @Test
    void version_emptyEnvironment_usesItsOwnRuntime(@TempDir Path folder) throws Exception {
        Ran ran = Ran.of(folder, Map.of("PATH", "/usr/bin:/bin"), IMAGE.resolve("bin/icequill").toString(),
                "--version");

        assertThat(ran).isEqualTo(new Ran(0, "icequill 0.1.0\n", ""));
    }

    /**
     * Moved, linked, in a locale with digits of its own and another time zone, the program prints all that was issued with the same bytes as
     * the process that printed the demo while the image was built.
     */
    @Tag("wide")
    @Test
    void papers_movedImageElsewhere_areTheSameBytes(@TempDir Path folder) throws Exception {
        Path shop = folder.resolve("shop");
        copy(TRAINED, shop);
        Path issued = Path.of("papers/issued");
        List<Path> names;
        try (Stream<Path> papers = Files.walk(shop.resolve(issued))) {
            names = papers.filter(file -> file.toString().endsWith(".pdf")).map(shop::relativize).toList();
        }
        assertThat(names).hasSizeGreaterThan(20);
        for (Path name : names) {
            Files.delete(shop.resolve(name));
        }

        Ran ran = elsewhere(folder, "paper", "reprint", "--all", "--shop", "shop");

        assertThat(ran.status()).as(ran.out() + ran.err()).isZero();
        assertThat(names).allSatisfy(name -> assertThat(Files.mismatch(TRAINED.resolve(name), shop.resolve(name)))
                .as(name.toString()).isEqualTo(-1));
    }

    /** Papers that were not issued, too. */
    @Tag("long")
    @Test
    void demo_movedImageElsewhere_isTheSameBytes(@TempDir Path folder) throws Exception {
        Ran ran = elsewhere(folder, "demo", "look");

        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("INV-2026-00010", "Mercado del Mar");
        Path here = TRAINED.resolve("papers");
        try (Stream<Path> papers = Files.walk(here).filter(Files::isRegularFile)) {
            assertThat(papers.toList()).hasSizeGreaterThan(60).allSatisfy(paper -> assertThat(
                    Files.mismatch(paper, folder.resolve("look/papers").resolve(here.relativize(paper))))
                    .as(paper.toString()).isEqualTo(-1));
        }
    }

    private static Ran elsewhere(Path folder, String... line) throws Exception {
        Path moved = folder.resolve("a place");
        copy(IMAGE, moved);
        Path link = Files.createSymbolicLink(folder.resolve("iq"), moved.resolve("bin/icequill"));
        return Ran.of(folder, Map.of("PATH", "/usr/bin:/bin", "TZ", "Asia/Tokyo", "JDK_JAVA_OPTIONS",
                "-Duser.language=ar"),
                Stream.concat(Stream.of(link.toString()), Stream.of(line)).toArray(String[]::new));
    }

    /** The cache makes the fast start; it must go with the image, and must not hide a library that the user replaced. */
    @Tag("wide")
    @Test
    void cache_movedImage_fitsUntilAJarIsReplaced(@TempDir Path folder) throws Exception {
        assumeThat(IMAGE.resolve("lib/icequill.aot")).exists();
        Path moved = folder.resolve("moved");
        copy(IMAGE, moved);
        String program = moved.resolve("bin/icequill").toString();
        Map<String, String> insist = Map.of("PATH", "/usr/bin:/bin", "JDK_JAVA_OPTIONS", "-XX:AOTMode=on");

        assertThat(Ran.of(folder, insist, program, "--version").status()).isZero();

        Path library = onlyJar(moved.resolve("lib"), "freemarker-");
        Files.setLastModifiedTime(library, FileTime.from(Instant.parse("2020-02-20T20:20:20Z")));
        assertThat(Ran.of(folder, insist, program, "--version").status()).isNotZero();
        assertThat(Ran.of(folder, Map.of("PATH", "/usr/bin:/bin"), program, "--version"))
                .isEqualTo(new Ran(0, "icequill 0.1.0\n", ""));
    }

    @Test
    void fileNameWithAccent_noLocaleSet_isFound() throws Exception {
        // By the shell, because the JVM of the tests may itself run without a locale.
        shell(common, "icequill export - late-call --shop shop > \"Jos$(printf '\\303\\251').yaml\"");

        Ran ran = shell(common, "icequill price \"Jos$(printf '\\303\\251').yaml\" --shop shop");

        assertThat(ran.status()).as(ran.err()).isZero();
    }

    /** The commands of the README's chapter on one's own shop, one after the other. */
    @Tag("wide")
    @Test
    void readme_commandsForAShop_doAsItSays(@TempDir Path folder) throws Exception {
        List<String> commands = Files.readString(Path.of("README.md")).lines()
                .map(line -> line.replaceAll("#.*", "").strip())
                .filter(line -> line.startsWith("icequill ") && !line.contains("DIR")).toList();
        assertThat(commands).hasSize(8);

        String within = "";
        for (String command : commands) {
            Ran ran = shell(folder, within + command);
            assertThat(ran.status()).as(command + ran.err()).isEqualTo(command.equals("icequill check") ? 3 : 0);
            within = "cd my-shop && ";
            putInOwnValues(folder.resolve("my-shop"));
        }
        assertThat(folder.resolve("my-shop/papers/issued/INV-2026/INV-2026-00001.pdf")).isNotEmptyFile();
    }

    /** On a terminal headings of the help are bold; NO_COLOR takes every such sign out. */
    @Test
    void help_withoutColor_hasNoSigns(@TempDir Path folder) throws Exception {
        Ran bold = shell(folder, "TERM=xterm script -qec 'icequill price --help' /dev/null");
        Ran plain = shell(folder, "export NO_COLOR=1; TERM=xterm script -qec 'icequill price --help' /dev/null");

        assertThat(bold.out()).contains("\u001b[");
        assertThat(plain.out()).contains("Usage: icequill price").doesNotContain("\u001b[");
    }

    /** On a terminal of sixty columns no line is wider; in a pipe a row is a line. */
    @Test
    void table_onATerminal_fitsIt() throws Exception {
        Ran narrow = shell(common,
                "export ICEQUILL_SHOP=shop; script -qec 'stty cols 60; icequill price late-call' /dev/null");
        Ran piped = shell(common, "export ICEQUILL_SHOP=shop; icequill price late-call");

        assertThat(narrow.status()).as(narrow.out()).isZero();
        assertThat(narrow.out().lines().takeWhile(line -> !line.isBlank()))
                .anyMatch(line -> line.startsWith("Service call within"))
                .allSatisfy(line -> assertThat(line.strip()).hasSizeLessThanOrEqualTo(60));
        assertThat(piped.out()).contains("Service call within 30 miles, standard hours    Charged");
    }

    private static Ran shell(Path folder, String command) throws Exception {
        return Ran.of(folder, Map.of("PATH", IMAGE.resolve("bin").toAbsolutePath() + ":/usr/bin:/bin"), "sh", "-c",
                command);
    }

    /** As if each value that a check lists were replaced: the marks are taken away. */
    private static void putInOwnValues(Path shop) throws IOException {
        try (Stream<Path> files = Files.walk(shop)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".yaml")).toList()) {
                Files.writeString(file, Files.readString(file).replaceAll("# as shipped[^\n]*", ""));
            }
        }
    }

    @Test
    void readme_table_isWhatTheProgramPrints() throws Exception {
        Ran ran = Ran.of(common, Map.of(), IMAGE.resolve("bin/icequill").toAbsolutePath().toString(), "price",
                "late-call", "--shop", "shop");

        assertThat(Files.readString(Path.of("README.md"))).contains(ran.out().lines().limit(5).toList());
    }

    /** What the libraries' licences ask for is in the image: a list of all, the texts, and jars that can be replaced. */
    @Test
    void image_everyLibrary_isListedWithItsLicence() throws Exception {
        String list = Files.readString(IMAGE.resolve("legal/THIRD-PARTY.md"));
        try (Stream<Path> jars = Files.list(IMAGE.resolve("lib"))) {
            List<String> names = jars.map(jar -> jar.getFileName().toString()).filter(name -> name.endsWith(".jar"))
                    .map(name -> name.replaceAll("-[0-9][0-9A-Za-z.-]*[.]jar$", "").replace(".jar", ""))
                    .filter(name -> !name.equals("icequill")).toList();
            assertThat(names).hasSizeGreaterThan(20).allSatisfy(name -> assertThat(list).contains("| " + name + " |"));
        }
        assertThat(IMAGE.resolve("legal/LGPL-2.1.txt")).isNotEmptyFile();
        assertThat(IMAGE.resolve("legal/LGPL-3.0.txt")).isNotEmptyFile();
        assertThat(IMAGE.resolve("legal/GPL-3.0.txt")).isNotEmptyFile();
        assertThat(IMAGE.resolve("legal/MPL-2.0.txt")).isNotEmptyFile();
        assertThat(IMAGE.resolve("legal/EDL-1.0.txt")).isNotEmptyFile();
        assertThat(IMAGE.resolve("LICENSE")).isNotEmptyFile();
    }

    private static Path onlyJar(Path lib, String start) throws IOException {
        try (Stream<Path> jars = Files.list(lib)) {
            List<Path> found = jars.filter(jar -> jar.getFileName().toString().startsWith(start)).toList();
            assertThat(found).hasSize(1);
            return found.getFirst();
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target, StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
        }
    }
}
