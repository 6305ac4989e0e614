package icequill;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** What is handed out to install, where the build made it ({@code -Pdist}): installed, used and taken away as a user would. */
@EnabledIfSystemProperty(named = "icequill.packages", matches = ".+", disabledReason = "packages are made with -Pdist")
class PackagesIT {

    private static final Map<String, String> PLAIN = Map.of("PATH", "/usr/bin:/bin:/usr/sbin:/sbin");
    private static final Map<String, String> INSIST = Map.of("PATH", "/usr/bin:/bin", "JDK_JAVA_OPTIONS",
            "-XX:AOTMode=on");
    private static final Ran VERSION = new Ran(0, "icequill 0.1.0\n", "");

    @TempDir
    Path folder;

    /** Into a root of its own, so that the machine of the tests stays as it was. */
    @Test
    void debianPackage_installed_worksAndGoesWithoutATrace() throws Exception {
        Path root = folder.resolve("root");
        Path admin = Files.createDirectories(root.resolve("var/lib/dpkg"));
        for (String list : List.of("status", "available")) {
            Files.createFile(admin.resolve(list));
        }
        Files.createDirectories(admin.resolve("info"));
        Files.createDirectories(admin.resolve("updates"));

        done("dpkg", "--root=" + root, "--force-depends", "--force-not-root", "--log=/dev/null", "--install",
                only("icequill_0.1.0_", ".deb").toString());

        String program = root.resolve("usr/bin/icequill").toString();
        assertThat(Ran.of(folder, PLAIN, program, "--version")).isEqualTo(VERSION);
        if (Files.exists(root.resolve("usr/lib/icequill/lib/icequill.aot"))) {
            assertThat(Ran.of(folder, INSIST, program, "--version").status()).as("the cache fits").isZero();
        }
        assertThat(Ran.of(folder, PLAIN, program, "new", "shop").status()).isZero();
        assertThat(Ran.of(folder, PLAIN, program, "audit", "--shop", "shop").status()).isZero();
        assertManual(root.resolve("usr/share/man/man1"));
        assertCompletes(root.resolve("usr/share/bash-completion/completions/icequill"), root.resolve("usr/bin"));

        done("dpkg", "--root=" + root, "--force-not-root", "--log=/dev/null", "--purge", "icequill");

        try (Stream<Path> left = Files.walk(root)) {
            assertThat(left.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .filter(file -> !file.startsWith(admin))).isEmpty();
        }
        assertThat(root.resolve("usr/lib/icequill")).doesNotExist();
    }

    @Test
    void archive_unpacked_worksWithItsCacheManualAndCompletion() throws Exception {
        done("tar", "-xzf", only("icequill-0.1.0-linux-", ".tar.gz").toString());
        Path home = folder.resolve("icequill-0.1.0");

        assertThat(Ran.of(folder, PLAIN, home.resolve("bin/icequill").toString(), "--version")).isEqualTo(VERSION);
        if (Files.exists(home.resolve("lib/icequill.aot"))) {
            assertThat(Ran.of(folder, INSIST, home.resolve("bin/icequill").toString(), "--version").status()).isZero();
        }
        assertManual(home.resolve("share/man/man1"));
        assertCompletes(home.resolve("share/bash-completion/completions/icequill"), home.resolve("bin"));
    }

    @Test
    void archiveForAnyJava_withTheSystemsJava_works() throws Exception {
        Path home = anyJava();

        assertThat(Ran.of(folder, Map.of("PATH", "/usr/bin:/bin", "JAVA_HOME", System.getProperty("java.home")),
                home.resolve("bin/icequill").toString(), "--version")).isEqualTo(VERSION);
        assertThat(Files.readString(home.resolve("bin/icequill.cmd")).split("\n"))
                .allSatisfy(line -> assertThat(line).endsWith("\r"));
    }

    @Test
    void archiveForAnyJava_withAnOlderJavaOrNone_saysWhatItNeeds() throws Exception {
        Path home = anyJava();
        Path old = Files.createDirectories(folder.resolve("old/bin")).resolve("java");
        Files.writeString(old, "#!/bin/sh\necho '    java.specification.version = 17' >&2\n");
        assertThat(old.toFile().setExecutable(true)).isTrue();

        for (String java : List.of(folder.resolve("old").toString(), folder.resolve("none").toString())) {
            Ran ran = Ran.of(folder, Map.of("PATH", "/usr/bin:/bin", "JAVA_HOME", java),
                    home.resolve("bin/icequill").toString(), "--version");

            assertThat(ran.status()).isEqualTo(2);
            assertThat(ran.err()).contains("Icequill needs Java 21 or newer", java);
        }
    }

    private Path anyJava() throws Exception {
        done("unzip", "-q", only("icequill-0.1.0-any-java", ".zip").toString());
        return folder.resolve("icequill-0.1.0");
    }

    /** A page for the program and for each command, which {@code man} reads without a complaint. */
    private void assertManual(Path pages) throws Exception {
        try (Stream<Path> files = Files.list(pages)) {
            List<Path> all = files.sorted().toList();
            assertThat(all).extracting(page -> page.getFileName().toString())
                    .contains("icequill.1", "icequill-invoice-reissue.1", "icequill-customer-merge.1")
                    .hasSizeGreaterThan(40);
        }
        Ran read = done("man", "--warnings", "-E", "UTF-8", "-l",
                pages.resolve("icequill-invoice-reissue.1").toString());
        assertThat(read.err()).isEmpty();
        assertThat(read.out()).contains("--purchase-order", "INV-2026-00001");
    }

    /** Commands by themselves, and names of the book by a question to the program. */
    private void assertCompletes(Path script, Path programs) throws Exception {
        done("bash", "-n", script.toString());
        assertThat(completed(script, programs, "icequill cust", 1)).isEqualTo(new Ran(0, "customer\n", ""));
        Path shop = folder.resolve("of-" + programs.getFileName() + programs.getNameCount());
        done(programs.resolve("icequill").toString(), "new", shop.toString(), "--demo");
        assertThat(completed(script, programs, "ICEQUILL_SHOP='" + shop + "'", "icequill site history hot", 3))
                .isEqualTo(new Ran(0, "hotel-fernhill\n", ""));
    }

    private Ran completed(Path script, Path programs, String words, int at) throws Exception {
        return completed(script, programs, "ICEQUILL_SHOP=", words, at);
    }

    private Ran completed(Path script, Path programs, String first, String words, int at) throws Exception {
        // Outside of a completion the shell's compopt only complains.
        return done("bash", "-c",
                "compopt() { :; }; export " + first + "; export PATH='" + programs.toAbsolutePath()
                        + "':$PATH; source '"
                        + script + "'; COMP_WORDS=(" + words + "); COMP_CWORD=" + at
                        + "; _complete_icequill; echo \"${COMPREPLY[@]}\"");
    }

    private Ran done(String... command) throws Exception {
        Ran ran = Ran.of(folder, Map.of(), command);
        assertThat(ran.status()).as(String.join(" ", command) + ": " + ran.out() + ran.err()).isZero();
        return ran;
    }

    private static Path only(String start, String end) throws IOException {
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("icequill.packages")))) {
            List<Path> found = files.filter(file -> file.getFileName().toString().startsWith(start)
                    && file.getFileName().toString().endsWith(end)).toList();
            assertThat(found).hasSize(1);
            return found.getFirst().toAbsolutePath();
        }
    }
}
