package icequill.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.care.AuditReport;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.Series;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.LockWait;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two offices share a book on a server. */
class OfficesTest {

    private static final Series NORTH = new Series(PaperKind.INVOICE, PaperKind.INVOICE.usualLetters(), "north", 2026);
    private static final Series SOUTH = new Series(PaperKind.INVOICE, PaperKind.INVOICE.usualLetters(), "south", 2026);

    @TempDir
    private Path north;

    @TempDir
    private Path south;

    @Test
    void foldersOfTheirOwn_eachAuditsItsPapersAndSaysWhatLiesElsewhere() throws IOException {
        BookPlace.OnServer here = (BookPlace.OnServer) Database.POSTGRESQL.place(north);
        BookPlace there = new BookPlace.OnServer(here.url(), BookPlace.papersIn(south));
        try (Book book = Books.open(here); Book other = Books.open(there)) {
            Books.issue(book, NORTH, Origin.NONE, 1).orElseThrow();
            Books.issue(other, SOUTH, Origin.NONE, 2).orElseThrow();
            Books.issue(other, SOUTH, Origin.NONE, 3).orElseThrow();
            Books.issue(book, NORTH, Origin.NONE, 4).orElseThrow();

            AuditReport report = audit(book, "north");
            assertThat(report.findings()).isEmpty();
            assertThat(report.papers()).isEqualTo(4);
            assertThat(report.elsewhere()).containsExactly("INV-south-2026 2");
            assertThat(audit(other, "south").findings()).isEmpty();
            assertThat(audit(other, "south").elsewhere()).containsExactly("INV-north-2026 2");

            Files.delete(new PaperFiles(there.papers()).place(SOUTH, "INV-south-2026-00001"));
            assertThat(audit(other, "south").findings()).extracting(Problem::message)
                    .containsExactly("the file of INV-south-2026-00001 is missing");
            assertThat(audit(book, "north").findings()).isEmpty();

            Path file = north.resolve("north.backup");
            assertThat(book.backup(file, Books.READER, Optional.of("north"), Books.UNHEARD).orElseThrow().findings())
                    .isEmpty();
            assertThat(Book.restore(file, BookPlace.inShop(north.resolve("again")), Books.READER, Books.UNHEARD)
                    .orElseThrow().papers()).isEqualTo(4);
        }
    }

    @Test
    void oneFolderForAll_isAuditedAsOne() throws IOException {
        BookPlace place = Database.POSTGRESQL.place(north);
        try (Book book = Books.open(place)) {
            Books.issue(book, NORTH, Origin.NONE, 1).orElseThrow();
            Books.issue(book, SOUTH, Origin.NONE, 2).orElseThrow();

            assertThat(audit(book, "north").findings()).isEmpty();
            assertThat(audit(book, "north").elsewhere()).isEmpty();
            Files.delete(new PaperFiles(place.papers()).place(SOUTH, "INV-south-2026-00001"));
            assertThat(audit(book, "north").findings()).as("the book itself has it").isEmpty();
            assertThat(audit(book, "south").findings()).extracting(Problem::message)
                    .containsExactly("the file of INV-south-2026-00001 is missing");
        }
    }

    /** Two shops on one server do not wait for each other; who waits for nobody would be told that the book is in use. */
    @Test
    void anotherBookOfTheServer_isWrittenInAtTheSameTime() {
        try (Book book = Books.open(Database.POSTGRESQL.place(north));
                Book other = Opening
                        .open(Database.POSTGRESQL.place(south), Books.CLOCK, Books.AUTHOR, LockWait.of(Duration.ZERO))
                        .orElseThrow()) {
            IssuedPaper here = book.write(transaction -> transaction.issue(NORTH, Origin.NONE, numbered -> {
                assertThat(Books.issue(other, SOUTH, Origin.NONE, 2).problems()).isEmpty();
                return Validated.valid(Books.printed(numbered, 1));
            })).orElseThrow();

            assertThat(here.number()).isEqualTo("INV-north-2026-00001");
        }
    }

    private static AuditReport audit(Book book, String office) {
        return book.audit(Books.READER, Optional.of(office), Books.UNHEARD).orElseThrow();
    }
}
