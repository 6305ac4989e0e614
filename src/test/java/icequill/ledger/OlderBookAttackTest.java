package icequill.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.files.disk.Folder;
import icequill.files.disk.Hash;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A book is put back to an earlier day, or exchanged, while its papers stay: no number is issued again, no PDF is replaced. */
@Tag("wide")
class OlderBookAttackTest {

    @TempDir
    private Path shop;

    @TempDir
    private Path other;

    @ParameterizedTest
    @EnumSource
    void bookPutBackToTheFirstPaper_refusesToWriteAndSaysSo(Database database) throws IOException {
        BookPlace place = threePapers(database);
        byte[] second = Files.readAllBytes(file(place, "INV-2026-00002"));
        putBack(database, place, 1);

        try (Book book = Books.open(place)) {
            assertThat(Books.issue(book, 7).problems()).extracting(Problem::message).containsExactly(
                    "the book is older than its papers: INV-2026-00003 was issued, and the book does not know it");
            assertThat(book.write(transaction -> transaction.register().add(Entered.group())).problems()).isNotEmpty();
            assertThat(Books.found(book, "crumb")).hasSize(1);
            assertThat(Books.audit(book).findings()).extracting(Problem::message).contains(
                    "the book is older than its papers: INV-2026-00003 was issued, and the book does not know it");
        }
        assertThat(file(place, "INV-2026-00002")).hasBinaryContent(second);
    }

    @ParameterizedTest
    @EnumSource
    void withoutTheNotedSeals_theNextFileTells(Database database) throws IOException {
        BookPlace place = threePapers(database);
        Folder.delete(new PaperFiles(place.papers()).seals().place());
        putBack(database, place, 1);

        try (Book book = Books.open(place)) {
            assertThat(Books.issue(book, 7).problems()).extracting(Problem::message).containsExactly(
                    "the book is older than its papers: INV-2026-00002 was issued, and the book does not know it");
        }
    }

    @ParameterizedTest
    @EnumSource
    void withoutTheFiles_theNotedSealTells(Database database) throws IOException {
        BookPlace place = threePapers(database);
        Files.delete(file(place, "INV-2026-00002"));
        Files.delete(file(place, "INV-2026-00003"));
        putBack(database, place, 1);

        try (Book book = Books.open(place)) {
            assertThat(Books.issue(book, 7).problems()).hasSize(1);
        }
    }

    /** The book is open already when it is exchanged. */
    @ParameterizedTest
    @EnumSource
    void bookPutBackWhileItIsOpen_isSeenWhenANumberIsTaken(Database database) throws IOException {
        BookPlace place = threePapers(database);
        byte[] second = Files.readAllBytes(file(place, "INV-2026-00002"));
        try (Book book = Books.open(place)) {
            putBack(database, place, 1);

            assertThat(Books.issue(book, 7).problems()).extracting(Problem::message).containsExactly(
                    "the book is older than its papers: INV-2026-00002 was issued, and the book does not know it");
        }
        assertThat(file(place, "INV-2026-00002")).hasBinaryContent(second);
    }

    @ParameterizedTest
    @EnumSource
    void papersOfAnotherBook_areKnownByTheirSeal(Database database) throws IOException {
        BookPlace place = threePapers(database);
        BookPlace begun = switch (database.place(other)) {
        case BookPlace.InFile(Path file, Path papers) -> new BookPlace.InFile(file, place.papers());
        case BookPlace.OnServer(String url, Path papers) -> new BookPlace.OnServer(url, place.papers());
        };
        BookPlace elsewhere = switch (begun) {
        case BookPlace.InFile(Path file, Path papers) -> new BookPlace.InFile(file, other.resolve("papers"));
        case BookPlace.OnServer(String url, Path papers) -> new BookPlace.OnServer(url, other.resolve("papers"));
        };
        try (Book book = Books.open(elsewhere)) {
            for (int i = 11; i <= 15; i++) {
                Books.issue(book, i).orElseThrow();
            }
        }

        try (Book book = Books.open(begun)) {
            assertThat(Books.issue(book, 16).problems()).extracting(Problem::message).containsExactly(
                    "the papers are those of another book: INV-2026-00003 bears another seal here than in the book");
            assertThat(Books.audit(book).findings()).extracting(Problem::message).contains(
                    "the papers are those of another book: INV-2026-00003 bears another seal here than in the book");
        }
    }

    /** A paper that waits to be moved is the only file of it, and an older book must not clear it away. */
    @ParameterizedTest
    @EnumSource
    void unfinishedFileOfALaterPaper_isKeptByAnOlderBook(Database database) throws IOException {
        BookPlace place = threePapers(database);
        PaperFiles files = new PaperFiles(place.papers());
        Path third = file(place, "INV-2026-00003");
        Path waiting = files.unfinished("INV-2026-00003", Hash.of(Files.readAllBytes(third)));
        Files.move(third, waiting);
        putBack(database, place, 1);

        Books.open(place).close();

        assertThat(waiting).exists();
    }

    @ParameterizedTest
    @EnumSource
    void fileThatLiesInThePlaceOfAPaper_isNotReplaced(Database database) throws IOException {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            Validated<IssuedPaper> issued = book.write(transaction -> transaction.issue(Books.INVOICES, Origin.NONE,
                    numbered -> {
                        put(file(place, numbered.number()), "somebody's own");
                        return Validated.valid(Books.printed(numbered, 1));
                    }));

            assertThat(issued.problems()).isEmpty();
            assertThat(file(place, "INV-2026-00001")).hasContent("somebody's own");
            assertThat(Books.audit(book).findings()).extracting(Problem::message)
                    .containsExactly("the file of INV-2026-00001 was changed after it was issued");
        }
    }

    private static void put(Path file, String text) {
        try {
            Files.createDirectories(Folder.madeFor(file));
            Files.writeString(file, text);
        } catch (IOException failed) {
            throw new java.io.UncheckedIOException(failed);
        }
    }

    private BookPlace threePapers(Database database) {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            for (int i = 1; i <= 3; i++) {
                Books.issue(book, i).orElseThrow();
            }
        }
        return place;
    }

    private static Path file(BookPlace place, String number) {
        return new PaperFiles(place.papers()).place(Books.INVOICES, number);
    }

    /** Makes the database what it was when it had so many papers. */
    private static void putBack(Database database, BookPlace place, int papers) {
        try (Connections connections = Connections.to(place)) {
            connections.writer().useTransaction(handle -> {
                Tampering.unguard(database, handle);
                List<String> later = List.of(
                        "DELETE FROM paper_line WHERE paper_id IN (SELECT id FROM paper WHERE position > " + papers
                                + ")",
                        "DELETE FROM paper_word WHERE paper_id IN (SELECT id FROM paper WHERE position > " + papers
                                + ")",
                        "DELETE FROM paper WHERE position > " + papers,
                        "UPDATE whereabouts SET last_paper = (SELECT max(id) FROM paper)",
                        "UPDATE series SET next = " + (papers + 1)
                                + ", head = (SELECT seal FROM paper WHERE position = "
                                + papers + ")");
                later.forEach(handle::execute);
            });
        }
    }
}
