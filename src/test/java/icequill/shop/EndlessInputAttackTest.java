package icequill.shop;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.files.disk.CsvFile;
import icequill.files.yaml.YamlReader;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Files made to keep the program busy, or its reader reading, for ever. The limits count; the timeouts only end a test that failed. */
@Timeout(60)
@Tag("wide")
class EndlessInputAttackTest {

    @TempDir
    Path folder;

    /** 510 KB; each level stands for two of the level before it, and there are 19. */
    @Test
    void aliasesOfAliases_areEachAProblemAndNothingMore() throws IOException {
        StringBuilder text = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 19; i++) {
            text.append("a").append(i).append(": &a").append(i).append(" [*a").append(i - 1).append(", *a")
                    .append(i - 1).append("]\n");
        }
        text.append("b: [");
        while (text.length() < 510_000) {
            text.append("*a18, ");
        }

        List<Problem> problems = problems(text.append("x]\n").toString());

        assertThat(problems).hasSizeLessThanOrEqualTo(1_001);
        assertThat(problems).extracting(Problem::code).containsAnyOf(Code.NOT_ALLOWED, Code.UNREADABLE);
    }

    @Test
    void oneAnchorAndAHundredThousandAliases_areCutOffAndSaidToBe() throws IOException {
        List<Problem> problems = problems("a: &a x\nb: [" + "*a, ".repeat(100_000) + "x]\n");

        assertThat(problems).hasSize(1_001);
        assertThat(problems.getLast().message())
                .isEqualTo("more problems than 1000 were found; the rest is not listed");
    }

    @Test
    void twoHundredThousandBadEntries_areCutOffAndSaidToBe() throws IOException {
        DemoShop.files(folder);
        Path visit = folder.resolve("visits/late-call.yaml");
        Files.writeString(visit, Files.readString(visit) + "people2:\n" + "- 1\n".repeat(200_000));
        ShopFolder shop = DemoShop.read(folder);
        DemoShop.visit(shop, visit);
        assertThat(shop.problems()).isNotEmpty();

        Files.writeString(visit, "format: 1\nsite: x\npeople:\n" + "- 1\n".repeat(200_000));
        ShopFolder again = DemoShop.read(folder);
        DemoShop.visit(again, visit);

        assertThat(again.problems()).hasSize(1_001);
    }

    @Test
    void listWithTwoHundredThousandBadRows_isCutOff() throws IOException {
        Path list = Files.writeString(folder.resolve("list.csv"), "id,name\n" + "a,b,c\n".repeat(200_000));
        Problems problems = new Problems();

        CsvFile.read(list, Set.of("id", "name"), new HashSet<>(Set.of("id")), problems);

        assertThat(problems.list()).hasSize(1_001);
    }

    @Test
    void pipeInsteadOfAFile_isAProblemAndIsNotWaitedFor() throws Exception {
        Path pipe = folder.resolve("late-call.yaml");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
        Problems problems = new Problems();

        YamlReader.read(pipe, "late-call.yaml", problems);
        CsvFile.read(pipe, Set.of("id"), new HashSet<>(), problems);
        YamlReader.read(Path.of("/dev/zero"), "zero", problems);

        assertThat(problems.list()).hasSize(3).extracting(Problem::message).containsOnly("it is no ordinary file");
    }

    private List<Problem> problems(String text) throws IOException {
        Problems problems = new Problems();
        YamlReader.read(Files.writeString(folder.resolve("a.yaml"), text), "a.yaml", problems);
        assertThat(problems.list()).extracting(Problem::place).extracting(Place::file).contains("a.yaml");
        return problems.list();
    }
}
