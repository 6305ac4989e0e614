package icequill.ledger.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.ledger.Book;
import icequill.ledger.Books;
import icequill.ledger.Database;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Files of papers within a server's book. */
class KeptPdfsTest {

    private static final String NUMBER = "INV-2026-00001";

    @TempDir
    private Path shop;

    private static List<byte[]> kept(Book book) {
        return Books.read(book, open -> open.keptPdfs().of(NUMBER).map(Pdf::bytes).stream().toList());
    }

    @ParameterizedTest
    @EnumSource
    void issuedPaper_isKeptInAServersBookAndComesBackWithABackup(Database database) throws IOException {
        Path file = shop.resolve("kept.backup");
        BookPlace place = database.place(shop.resolve("one"));
        byte[] issued;
        try (Book book = Books.open(place)) {
            Books.issue(book, 1).orElseThrow();
            Path paper = new PaperFiles(place.papers()).place(Books.INVOICES, NUMBER);
            issued = Files.readAllBytes(paper);
            assertThat(kept(book)).hasSize(database == Database.POSTGRESQL ? 1 : 0)
                    .allSatisfy(pdf -> assertThat(pdf).isEqualTo(issued));
            if (database == Database.POSTGRESQL) {
                Files.delete(paper);
                assertThat(Books.audit(book).findings()).extracting(Problem::message)
                        .containsExactly("the file of " + NUMBER + " is missing");
            }
            assertThat(book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow().isRestorable())
                    .isTrue();
        }

        for (Database other : Database.values()) {
            BookPlace again = other.place(shop.resolve("again-" + other));
            Book.restore(file, again, Books.READER, Books.UNHEARD).orElseThrow();
            try (Book book = Books.open(again)) {
                assertThat(new PaperFiles(again.papers()).place(Books.INVOICES, NUMBER)).hasBinaryContent(issued);
                assertThat(kept(book)).hasSize(other == Database.POSTGRESQL ? 1 : 0);
                assertThat(Books.audit(book).findings()).isEmpty();
            }
        }
    }

    @Test
    void changedInTheBook_isRefusedAndElseFound() {
        BookPlace place = Database.POSTGRESQL.place(shop);
        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            Books.issue(book, 1).orElseThrow();
            String change = "UPDATE paper_pdf SET pdf = 'forged'";
            assertThatThrownBy(() -> connections.writer().useHandle(handle -> handle.execute(change)))
                    .hasStackTraceContaining("an issued paper never changes");

            connections.writer().useHandle(handle -> {
                handle.execute("ALTER TABLE paper_pdf DISABLE TRIGGER ALL");
                handle.execute(change);
            });

            assertThat(Books.audit(book).findings()).extracting(Problem::message)
                    .containsExactly("the file of " + NUMBER + " in the book itself was changed after it was issued");
        }
    }
}
