package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.cli.CommandsTest.Run;
import icequill.oracle.ForecastOracle;
import icequill.oracle.Requests;
import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Generated requests through the command line, worked out again by other means; {@link OracleRuns} takes all 200. */
@Tag("wide")
class ForecastOracleTest {

    @TempDir
    static Path folder;

    private static Path shop;

    @BeforeAll
    static void demoShop() {
        shop = folder.resolve("shop");
        DemoShop.in(shop);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void request_generated_agreesWithTheOracle(int number) throws IOException {
        assertAgrees(number);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("many")
    void manyRequests_generated_agreeWithTheOracle(int number) throws IOException {
        assertAgrees(number);
    }

    static IntStream many() {
        return IntStream.range(2, 20);
    }

    private static void assertAgrees(int number) throws IOException {
        Run run = Run.of("compare", new Requests(shop).write(number).toString(), "--json");

        assertThat(run.status()).as(run.err()).isZero();
        ForecastOracle.Verdict verdict = ForecastOracle.judge(run.json());
        assertThat(verdict.compared()).isGreaterThan(60);
        assertThat(verdict.disagreements()).isEmpty();
    }

    /** Not even the order of keys differs. */
    @Test
    void json_twice_hasTheSameBytes() {
        String request = shop.resolve("quotes/crumb-lane-plan.yaml").toString();

        assertThat(Run.of("compare", request, "--json").out()).isEqualTo(Run.of("compare", request, "--json").out());
    }
}
