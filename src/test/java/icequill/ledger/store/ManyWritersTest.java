package icequill.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Book;
import icequill.ledger.BookChild;
import icequill.ledger.Books;
import icequill.ledger.Database;
import icequill.ledger.Opening;
import icequill.ledger.find.PaperFilter;
import icequill.ledger.papers.Origin;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Many who issue at once get numbers without a gap or a repeat, and nobody waits for ever. */
@Tag("wide")
class ManyWritersTest {

    private static final int THREADS = 16;
    private static final int EACH = 50;

    @TempDir
    private Path shop;

    @ParameterizedTest
    @EnumSource
    void manyThreads_issueWithoutGapOrRepeat(Database database) throws Exception {
        try (Book book = Books.open(database.place(shop));
                ExecutorService threads = Executors.newFixedThreadPool(THREADS)) {
            List<Callable<List<String>>> work = IntStream.range(0, THREADS)
                    .<Callable<List<String>>>mapToObj(thread -> () -> issued(book, EACH)).toList();
            List<String> numbers = new ArrayList<>();
            for (Future<List<String>> done : threads.invokeAll(work)) {
                numbers.addAll(done.get());
            }

            assertThat(numbers).containsExactlyInAnyOrderElementsOf(upTo(THREADS * EACH));
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void twoProcesses_issueWithoutGapOrRepeat(Database database) throws Exception {
        BookPlace place = database.place(shop);
        Books.open(place).close();
        Process one = BookChild.start(place, "issue", "60");
        Process two = BookChild.start(place, "issue", "60");
        List<String> numbers = new ArrayList<>(told(one));
        numbers.addAll(told(two));

        assertThat(List.of(one.waitFor(), two.waitFor())).containsExactly(0, 0);
        assertThat(numbers).containsExactlyInAnyOrderElementsOf(upTo(120));
        try (Book book = Books.open(place)) {
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void secondProcess_waitsThenSaysWhoIsWriting(Database database) throws Exception {
        BookPlace place = database.place(shop);
        Books.open(place).close();
        Process holder = BookChild.start(place, "hold");
        try (BufferedReader out = new BufferedReader(
                new InputStreamReader(holder.getInputStream(), StandardCharsets.UTF_8));
                OutputStream in = holder.getOutputStream()) {
            assertThat(out.readLine()).isEqualTo("holding");
            try (Book book = Opening.open(place, Books.CLOCK, Books.AUTHOR, quick()).orElseThrow()) {
                List<Problem> problems = Books.issue(book, 1).problems();

                assertThat(problems).extracting(Problem::code).containsExactly(Code.BOOK_IN_USE);
                assertThat(problems.getFirst().message())
                        .startsWith("process " + holder.pid() + " on ")
                        .endsWith(" is writing in the book, and goes on");
                assertThat(Books.read(book, reading -> reading.papers().find("crumb", PaperFilter.NONE, 9))).isEmpty();

                in.write('\n');
                in.flush();
                assertThat(holder.waitFor()).isZero();
                assertThat(Books.issue(book, 1).orElseThrow().number()).isEqualTo("INV-2026-00002");
            }
        } finally {
            holder.destroyForcibly();
        }
    }

    @Test
    void lock_isWaitedForAsLongAsPatienceLasts() throws Exception {
        AtomicLong now = new AtomicLong();
        AtomicLong pauses = new AtomicLong();
        LockWait patience = new LockWait(Duration.ofSeconds(10), now::get, () -> {
            pauses.incrementAndGet();
            now.addAndGet(Duration.ofSeconds(1).toNanos());
        });
        Path file = shop.resolve("book.lock");
        try (BookLock first = BookLock.at(file, patience); BookLock second = BookLock.at(file, patience)) {
            try (var held = first.take().orElseThrow()) {
                assertThat(held.isValid()).isTrue();
                assertThat(second.take().problems()).extracting(Problem::code).containsExactly(Code.BOOK_IN_USE);
                assertThat(pauses).hasValue(10);
            }
            assertThat(second.take().problems()).isEmpty();
            assertThat(file).content().isEqualTo(Holder.self().text() + "\n");
        }
    }

    /** The system lets go of a process's locks on a file as soon as any of its handles on it is closed. */
    @Test
    void closedBook_leavesTheLockOfAnotherInTheSameProcess() throws Exception {
        BookPlace place = Database.SQLITE.place(shop);
        try (Book book = Books.open(place)) {
            List<Problem> problems = book
                    .write(transaction -> transaction.issue(Books.INVOICES, Origin.NONE, numbered -> {
                        Books.open(place).close();
                        try {
                            assertThat(BookChild.start(place, "impatient").waitFor()).isEqualTo(BookChild.IN_USE);
                        } catch (IOException | InterruptedException failed) {
                            throw new IllegalStateException(failed);
                        }
                        return Validated.valid(Books.printed(numbered, 1));
                    })).problems();

            assertThat(problems).isEmpty();
        }
    }

    @Test
    void stoppedThread_doesNotTakeTheBookFromOthers() throws Exception {
        try (Book book = Books.open(Database.SQLITE.place(shop));
                ExecutorService other = Executors.newSingleThreadExecutor()) {
            List<Code> stopped = other.submit(() -> {
                Thread.currentThread().interrupt();
                return Books.issue(book, 1).problems().stream().map(Problem::code).toList();
            }).get();

            assertThat(stopped).containsExactly(Code.CANNOT_WRITE);
            assertThat(Books.issue(book, 1).orElseThrow().position()).isEqualTo(1);
        }
    }

    /** A wait that is over after a few pauses on the one database, and in a twentieth of a second on the other. */
    private static LockWait quick() {
        AtomicLong now = new AtomicLong();
        return new LockWait(Duration.ofMillis(50), now::get, () -> now.addAndGet(Duration.ofMillis(10).toNanos()));
    }

    private static List<String> issued(Book book, int count) {
        return IntStream.range(0, count).mapToObj(i -> Books.issue(book, i).orElseThrow().number()).toList();
    }

    private static List<String> told(Process process) throws Exception {
        try (BufferedReader out = new BufferedReader(
                new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            return out.lines().toList();
        }
    }

    private static List<String> upTo(int last) {
        return IntStream.rangeClosed(1, last).mapToObj(Books.INVOICES::number).toList();
    }
}
