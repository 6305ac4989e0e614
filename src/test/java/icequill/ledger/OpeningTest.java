package icequill.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.care.AuditReport;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.store.BookContext;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.ledger.store.LockWait;
import icequill.ledger.store.Schema;
import icequill.ledger.store.Step;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Places that will not do, disks that are full, files that are damaged: each is said clearly, and nothing is lost. */
@Tag("wide")
class OpeningTest {

    @TempDir
    private Path shop;

    @ParameterizedTest
    @EnumSource
    void bookOfANewerVersion_isRefused(Database database) {
        BookPlace place = database.place(shop);
        Books.open(place).close();
        try (Connections connections = Connections.to(place)) {
            connections.writer().useTransaction(handle -> handle.execute("UPDATE flyway_schema_history"
                    + " SET version = '999' WHERE version = '" + Schema.NEWEST + "'"));
        }

        assertThat(Opening.open(place, Books.CLOCK, Books.AUTHOR).problems()).extracting(Problem::message)
                .containsExactly("the book was written by a newer version of the program");
    }

    @Test
    void databaseThatIsGoneWhilePapersAreThere_isNotMadeAnew() throws IOException {
        BookPlace place = threePapers();
        Files.delete(database());

        assertDamaged(Opening.open(place, Books.CLOCK, Books.AUTHOR), "the book's database is empty or gone");
        Files.createFile(database());
        assertDamaged(Opening.open(place, Books.CLOCK, Books.AUTHOR), "the book's database is empty or gone");
    }

    @Test
    void databaseThatIsCutOff_isSaidToBeDamaged() throws IOException {
        BookPlace place = threePapers();
        byte[] whole = Files.readAllBytes(database());
        Files.write(database(), Arrays.copyOf(whole, whole.length / 2));

        Validated<AuditReport> audited = Opening.open(place, Books.CLOCK, Books.AUTHOR).then(book -> {
            try (book) {
                return book.audit(Books.READER, Optional.empty(), Books.UNHEARD);
            }
        });

        assertThat(audited.problems().isEmpty() ? audited.orElseThrow().findings() : audited.problems())
                .extracting(Problem::code).contains(Code.BOOK_DAMAGED);
        assertThat(Files.size(database())).isEqualTo(whole.length / 2);
    }

    @Test
    void databaseThatIsNone_isSaidToBeDamaged() throws IOException {
        BookPlace place = threePapers();
        Files.writeString(database(), "Dear book, today it was hot. ".repeat(500));

        assertDamaged(Opening.open(place, Books.CLOCK, Books.AUTHOR), "the book's database is damaged");
    }

    @Test
    void folderThatIsAFile_isAProblem() throws IOException {
        Files.writeString(shop.resolve("book"), "no folder");

        assertThat(Opening.open(BookPlace.inShop(shop), Books.CLOCK, Books.AUTHOR).problems()).extracting(Problem::code)
                .containsExactly(Code.CANNOT_WRITE);
    }

    /** The database is told that it may have but a few more pages, and answers as on a full disk. */
    @Test
    void fullDisk_losesNothing() {
        BookPlace place = BookPlace.inShop(shop);
        Books.open(place).close();
        Connections connections = Connections.to(place);
        connections.writer().useHandle(handle -> handle.execute("PRAGMA max_page_count = 70"));
        List<String> issued = new ArrayList<>();
        Validated<IssuedPaper> last;
        try (Book book = new Book(place, connections, new Writer(place, connections, Optional.empty(),
                BookContext.usual(Books.CLOCK, LockWait.USUAL, Books.AUTHOR)), List.of())) {
            do {
                last = Books.issue(book, issued.size());
                last.map(IssuedPaper::number).map(issued::add);
            } while (last.problems().isEmpty() && issued.size() < 1000);
        }

        assertThat(last.problems()).extracting(Problem::message).containsExactly("the disk is full");
        assertThat(issued).isNotEmpty();
        try (Book book = Books.open(place)) {
            AuditReport report = Books.audit(book);
            assertThat(report.findings()).isEmpty();
            assertThat(report.papers()).isEqualTo(issued.size());
            assertThat(Books.issue(book, 1).orElseThrow().position()).isEqualTo(issued.size() + 1);
        }
    }

    @ParameterizedTest
    @EnumSource
    void diskThatIsFullBeforeThePaperIsOnIt_losesNothing(Database database) {
        assertNothingLost(database.place(shop), new FileSystemException("paper.pdf", null, "No space left on device"));
    }

    @ParameterizedTest
    @EnumSource
    void folderThatMayNotBeWrittenTo_losesNothing(Database database) {
        assertNothingLost(database.place(shop), new AccessDeniedException("papers"));
    }

    @ParameterizedTest
    @EnumSource
    void unfinishedFolderThatIsAFile_isAProblem(Database database) throws IOException {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            Path inTheWay = Files.createFile(new PaperFiles(place.papers()).unfinishedFolder());

            assertThat(Books.issue(book, 1).problems()).extracting(Problem::code).containsExactly(Code.CANNOT_WRITE);
            Files.delete(inTheWay);
            assertThat(Books.issue(book, 1).orElseThrow().position()).isEqualTo(1);
        }
    }

    @ParameterizedTest
    @EnumSource
    void fileThatCannotBeMoved_isReadWhereItIsAndMovedLater(Database database) throws IOException {
        BookPlace place = database.place(shop);
        PaperFiles files = new PaperFiles(place.papers());
        Path inTheWay = place.papers().resolve("INV-2026");
        try (Book book = Books.open(place)) {
            Files.writeString(inTheWay, "not a folder");
            IssuedPaper issued = Books.issue(book, 1).orElseThrow();

            assertThat(book.read(reading -> reading.papers().pdf(issued.number())).problems()).isEmpty();
            Files.delete(inTheWay);
            assertThat(Books.audit(book).findings()).isEmpty();
        }
        try (Book book = Books.open(place)) {
            assertThat(files.place(Books.INVOICES, "INV-2026-00001")).exists();
            assertThat(files.unfinished()).isEmpty();
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    private static void assertNothingLost(BookPlace place, IOException failing) {
        boolean[] fails = {true};
        Consumer<Step> disk = step -> {
            if (step == Step.FILE_WRITTEN && fails[0]) {
                throw new UncheckedIOException(failing);
            }
        };
        try (Book book = Opening.open(place, new BookContext(Books.CLOCK, LockWait.USUAL, Books.AUTHOR, disk))
                .orElseThrow()) {
            assertThat(Books.issue(book, 1).problems()).extracting(Problem::code).containsExactly(Code.CANNOT_WRITE);
            fails[0] = false;
            assertThat(Books.issue(book, 1).orElseThrow().position()).isEqualTo(1);
            assertThat(Books.audit(book).findings()).isEmpty();
            assertThat(new PaperFiles(place.papers()).unfinished()).isEmpty();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static void assertDamaged(Validated<Book> book, String message) {
        assertThat(book.problems()).extracting(Problem::code).containsExactly(Code.BOOK_DAMAGED);
        assertThat(book.problems().getFirst().message()).startsWith(message);
    }

    private BookPlace threePapers() {
        BookPlace place = BookPlace.inShop(shop);
        try (Book book = Books.open(place)) {
            for (int i = 0; i < 3; i++) {
                Books.issue(book, i).orElseThrow();
            }
        }
        return place;
    }

    private Path database() {
        return shop.resolve("book").resolve("book.sqlite");
    }
}
