package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.IssuedFiles;
import icequill.OwnProcess;
import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import icequill.problem.Check;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** A billing run whose process is killed: the next one goes on where it was, and all is billed as by one that nobody stopped. */
@Tag("wide")
class KilledBillingRunTest {

    private static final List<String> BILLING = List.of("invoice", "due", "--until", "2026-07-31", "--issue", "--date",
            "2026-07-31");
    /** What the calendar of the demo's agreements has until then, worked out by hand in {@link InstallmentBillingTest}. */
    private static final List<String> DUE = List.of("A-2026-002 1", "A-2026-002 2", "A-2026-004 1", "A-2026-006 1",
            "A-2026-006 2", "A-2026-007 1");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void killedInTheMiddle_goesOnWhereItWas(Database database) throws Exception {
        assertEachOnce(database, 2);
    }

    /** @param issued how many files of papers there are at least when it is killed */
    @Tag("long")
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3, 4, 5})
    void killedAnywhere_goesOnWhereItWas(int issued) throws Exception {
        assertEachOnce(Database.SQLITE, issued);
    }

    private void assertEachOnce(Database database, int issued) throws IOException, InterruptedException {
        BookShop shop = BookShop.in(folder, database);
        Process run = new ProcessBuilder(OwnProcess.java(List.of(), BillingRun.class,
                List.of(shop.folder().toString()))).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        IssuedFiles.await(shop.folder(), issued, run);
        run.destroyForcibly().waitFor();

        List<String> left = due(shop);
        assertThat(DUE).containsAll(left).hasSize(left.size() + invoices(shop).size());
        JsonNode rest = shop.json(BILLING.toArray(String[]::new));
        assertThat(rest.path("problems")).isEmpty();
        assertThat(rest.path("papers")).hasSize(left.size());
        assertThat(due(shop)).isEmpty();
        assertThat(invoices(shop)).containsExactlyInAnyOrder("INV-2026-00001", "INV-2026-00002", "INV-2026-00003",
                "INV-2026-00004", "INV-2026-00005", "INV-2026-00006");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    private static List<String> due(BookShop shop) {
        return StreamSupport.stream(shop.json("invoice", "due", "--until", "2026-07-31").path("installments")
                .spliterator(), false).map(one -> one.path("agreement").asString() + " " + one.path("number").asInt())
                .toList();
    }

    private static List<String> invoices(BookShop shop) {
        return StreamSupport.stream(shop.json("find", "--kind", "invoice").path("papers").spliterator(), false)
                .map(paper -> paper.path("number").asString()).toList();
    }

    /** The run, at the clock of the test. */
    static final class BillingRun {

        private BillingRun() {
        }

        public static void main(String[] args) {
            Run run = new BookShop(Path.of(args[0])).run(BILLING.toArray(String[]::new));
            Check.that(run.status() == 0, run.out() + run.err());
        }
    }
}
