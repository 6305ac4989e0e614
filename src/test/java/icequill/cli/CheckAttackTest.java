package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.cli.CommandsTest.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Values that are none, and things named twice, are problems of the files and no faults of the program. */
class CheckAttackTest {

    /** Every value behind a colon; each run tries every n-th, so that the tests stay short. */
    private static final Pattern VALUE = Pattern.compile("(?<=: )[A-Za-z0-9.][^,}#\\]\\n]*");
    private static final int STEP = Integer.getInteger("check.step", 211);
    private static final List<String> JUNK = List.of("abc", "-1", "[]", "1e30", "{}");

    @TempDir
    static Path common;

    private static Path shop;

    @BeforeAll
    static void shop() {
        shop = common.resolve("shop");
        DemoShop.in(shop);
    }

    /** All forms held against settings and rates; nothing is stored. */
    private static Run looked() {
        return Run.at(BookShop.CLOCK, Stream.concat(Stream.of("import", "--dry-run", "--shop", shop.toString()),
                DemoShop.forms(shop).stream().map(Path::toString)).toArray(String[]::new));
    }

    /** Each value that is tried is one kind of junk, by turns; a third of those that the second tier tries. */
    @ParameterizedTest
    @FieldSource("JUNK")
    void anyValueThatIsNone_isNoFault(String junk) throws IOException {
        assertNoFault(junk, 3 * STEP * JUNK.size());
    }

    @Tag("long")
    @ParameterizedTest
    @FieldSource("JUNK")
    void anyValueThatIsNone_eachKind_isNoFault(String junk) throws IOException {
        assertNoFault(junk, STEP);
    }

    private static void assertNoFault(String junk, int step) throws IOException {
        List<String> faults = new ArrayList<>();
        List<Path> files;
        try (Stream<Path> all = Files.walk(shop)) {
            files = all.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        }
        int count = JUNK.indexOf(junk) * step / JUNK.size();
        for (Path file : files) {
            String text = Files.readString(file);
            for (MatchResult value : VALUE.matcher(text).results().toList()) {
                if (count++ % step == 0) {
                    Files.writeString(file, text.substring(0, value.start()) + junk + text.substring(value.end()));
                    Run run = looked();
                    if (run.status() == 1) {
                        faults.add(shop.relativize(file) + ": " + value.group() + " as " + junk + ": " + run.err());
                    }
                }
            }
            Files.writeString(file, text);
        }

        assertThat(faults).isEmpty();
    }

    @Test
    void priceThatIsNoNumber_isAProblem() throws IOException {
        Path file = shop.resolve("pricing/labor.yaml");
        String text = Files.readString(file);
        Files.writeString(file, text.replaceFirst(": 98.00", ": abc"));

        Run run = looked();
        Files.writeString(file, text);

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).contains("pricing/labor.yaml:", "found the text \"abc\"");
    }

    @Test
    void machineTwiceInAPlannedVisit_isAProblem() throws IOException {
        Path file = shop.resolve("planned/autumn-condensers-hotel.yaml");
        String text = Files.readString(file);
        Files.writeString(file, text.replace("machine: banquet", "machine: main-kitchen"));

        Run run = looked();
        Files.writeString(file, text);

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).contains("planned/autumn-condensers-hotel.yaml", "main-kitchen", "a second time");
    }
}
