package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.IssuedFiles;
import icequill.OwnProcess;
import icequill.cli.Main;
import icequill.office.care.BookMaintenance;
import icequill.shop.ShopBook;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An office whose process is killed while it issues, and opened again: each invoice is there once, or not at all. */
@Tag("wide")
class KilledOfficeTest {

    private static final Pattern LINK = Pattern.compile("http://\\S+/enter\\?key=\\S+");
    private static final List<String> VISITS = List.of("late-call", "ten-minute-brushing");

    @TempDir
    private Path folder;

    /** @param issued how many invoices there are when it is killed, the next under way */
    @ParameterizedTest
    @ValueSource(ints = 1)
    void killedOffice_openedAgain_hasEachInvoiceOnce(int issued) throws Exception {
        assertEachInvoiceOnce(issued);
    }

    @Tag("long")
    @ParameterizedTest
    @ValueSource(ints = 0)
    void officeKilledAtItsFirstInvoice_openedAgain_hasEachInvoiceOnce(int issued) throws Exception {
        assertEachInvoiceOnce(issued);
    }

    private void assertEachInvoiceOnce(int issued) throws Exception {
        OpenOffice.withVisits(folder, VISITS.toArray(String[]::new)).close();
        try (Served office = Served.of(folder)) {
            Visitor owner = office.owner();
            for (String visit : VISITS.subList(0, issued)) {
                assertThat(issue(owner, visit)).isTrue();
            }
            String next = VISITS.get(issued);
            String key = owner.key("/visits/" + next);
            CompletableFuture<Boolean> sent = CompletableFuture.supplyAsync(() -> sent(owner, next, key));
            IssuedFiles.await(folder, issued, office.process());
            office.kill();
            assertThat(sent.join()).isNotNull();
        }
        try (OpenOffice office = OpenOffice.of(folder)) {
            Visitor owner = office.owner();
            VISITS.forEach(visit -> issue(owner, visit));
            assertThat(owner.json("/papers?kind=invoice&caller=").path("papers")).hasSize(VISITS.size());
            VISITS.forEach(visit -> assertThat(
                    owner.json("/visits/" + visit).at("/visit/state").asString()).isEqualTo("billed"));
        }
        ShopBook book = ShopBook.of(folder, OpenOffice.CLOCK);
        assertThat(BookMaintenance.of(book).audit(List.of(), papers -> {
        }).orElseThrow().findings()).isEmpty();
    }

    private static boolean sent(Visitor owner, String visit, String key) {
        try {
            return owner.post("/visits/" + visit + "/issue", Map.of("key", key)).statusCode() == 303;
        } catch (RuntimeException gone) {
            return false;
        }
    }

    private static boolean issue(Visitor owner, String visit) {
        String page = owner.get("/visits/" + visit).body();
        return page.contains("name=\"key\"") && sent(owner, visit, owner.key("/visits/" + visit));
    }

    /** An office in a process of its own. */
    private record Served(Process process, String link) implements AutoCloseable {

        static Served of(Path shop) throws IOException {
            Process process = new ProcessBuilder(OwnProcess.java(List.of(), Main.class,
                    List.of("office", "--shop", shop.toString(), "--port", "0", "--no-open")))
                    .redirectError(ProcessBuilder.Redirect.DISCARD).start();
            BufferedReader out = new BufferedReader(
                    new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                Matcher link = LINK.matcher(line);
                if (link.find()) {
                    return new Served(process, link.group());
                }
            }
            throw new AssertionError("the office did not open");
        }

        Visitor owner() {
            return new Visitor(link.substring(0, link.indexOf("/enter")), Optional.empty()).enter(link);
        }

        void kill() throws InterruptedException {
            process.destroyForcibly().waitFor();
        }

        @Override
        public void close() {
            process.destroyForcibly();
        }
    }
}
