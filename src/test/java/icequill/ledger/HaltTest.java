package icequill.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.care.AuditReport;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Step;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Whenever a process is stopped while it issues, the reopened book is whole: nothing is missing, half there, or there twice. */
@Tag("wide")
class HaltTest {

    @TempDir
    private Path shop;

    /** On a server those steps between which something may be in the database and not on the disk, or the other way round. */
    static Stream<Arguments> steps() {
        return Stream.concat(of(Database.SQLITE, Stream.of(Step.values())),
                of(Database.POSTGRESQL, Stream.of(Step.BEFORE_COMMIT, Step.COMMITTED)));
    }

    static Stream<Arguments> everyStep() {
        return of(Database.POSTGRESQL, Stream.of(Step.values()));
    }

    private static Stream<Arguments> of(Database database, Stream<Step> steps) {
        return steps.flatMap(step -> times(step).map(times -> Arguments.of(database, step, times)));
    }

    /** Two papers go into the transaction: the second has the first before it, and the first move leaves the second to do. */
    private static Stream<Integer> times(Step step) {
        return switch (step) {
        case BEFORE_COMMIT, COMMITTED -> Stream.of(1);
        case MOVED -> Stream.of(1, 2);
        default -> Stream.of(2);
        };
    }

    @ParameterizedTest
    @MethodSource("steps")
    void haltedProcess_leavesAWholeBook(Database database, Step step, int times) throws Exception {
        assertWhole(database, step, times);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("everyStep")
    void haltedProcessAtEveryStep_leavesAWholeBook(Database database, Step step, int times) throws Exception {
        assertWhole(database, step, times);
    }

    private void assertWhole(Database database, Step step, int times) throws Exception {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            Books.issue(book, 1).orElseThrow();
        }

        assertThat(BookChild.start(place, "halt", step.name(), String.valueOf(times)).waitFor()).isEqualTo(7);

        boolean stored = step.compareTo(Step.COMMITTED) >= 0;
        try (Book book = Books.open(place)) {
            AuditReport report = Books.audit(book);
            assertThat(report.findings()).isEmpty();
            assertThat(report.papers()).isEqualTo(stored ? 3 : 1);
            assertThat(new PaperFiles(place.papers()).unfinished()).isEmpty();
            assertThat(Books.issue(book, 5).orElseThrow().number()).isEqualTo("INV-2026-0000" + (stored ? 4 : 2));
        }
    }

    @Test
    void killedWhileNotingPayments_eachIsWholeOrNotThere() throws Exception {
        KillRuns.main(new String[]{"work", "1", "17", "PAY"});
    }

    @Tag("long")
    @Test
    void killedTwiceWhileNotingPayments_eachIsWholeOrNotThere() throws Exception {
        KillRuns.main(new String[]{"work", "2", "17", "PAY"});
    }

    /** The kill signal that no process can catch. */
    @ParameterizedTest
    @CsvSource({"SQLITE, 23", "POSTGRESQL, 9"})
    void killedProcess_leavesAllItSaidWasIssued(Database database, int papers) throws Exception {
        assertAllItSaid(database, papers);
    }

    @Tag("long")
    @ParameterizedTest
    @CsvSource("SQLITE, 2")
    void processKilledSoon_leavesAllItSaidWasIssued(Database database, int papers) throws Exception {
        assertAllItSaid(database, papers);
    }

    private void assertAllItSaid(Database database, int papers) throws Exception {
        BookPlace place = database.place(shop);
        Books.open(place).close();
        Process child = BookChild.start(place, "issue", "100000");
        List<String> told = new ArrayList<>();
        try (BufferedReader out = new BufferedReader(
                new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
            for (int i = 0; i < papers; i++) {
                told.add(out.readLine());
            }
            child.toHandle().destroyForcibly();
            child.waitFor();
            told.addAll(rest(out));
        }

        try (Book book = Books.open(place)) {
            AuditReport report = Books.audit(book);
            assertThat(report.findings()).isEmpty();
            assertThat(report.papers()).isBetween((long) told.size(), told.size() + 1L);
            assertThat(Books.read(book, reading -> told.stream().filter(
                    number -> !reading.papers().show(number).problems().isEmpty()).toList())).isEmpty();
        }
    }

    /** What it told before it was killed; a line that it did not end was not told. */
    private static List<String> rest(BufferedReader out) throws IOException {
        StringBuilder text = new StringBuilder();
        for (int letter = out.read(); letter >= 0; letter = out.read()) {
            text.append((char) letter);
        }
        return text.substring(0, text.lastIndexOf("\n") + 1).lines().toList();
    }
}
