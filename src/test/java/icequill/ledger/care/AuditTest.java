package icequill.ledger.care;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.files.disk.Folder;
import icequill.files.disk.Hash;
import icequill.ledger.Book;
import icequill.ledger.Books;
import icequill.ledger.Database;
import icequill.ledger.Tampering;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.PaperRow;
import icequill.ledger.papers.PaperRows;
import icequill.ledger.papers.Series;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.ledger.store.Seal;
import icequill.problem.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever is done to a book behind its back, an audit says what, and where. */
@Tag("wide")
class AuditTest {

    @TempDir
    private Path shop;

    @ParameterizedTest
    @EnumSource
    void untouchedBook_isClean(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            AuditReport report = threePapers(book);

            assertThat(report.findings()).isEmpty();
            assertThat(report.papers()).isEqualTo(4);
            assertThat(report.heads()).extracting(head -> head.series().text() + " " + head.papers())
                    .containsExactly("CN-2026 1", "INV-2026 3");
        }
    }

    @ParameterizedTest
    @EnumSource
    void editedRow_isFound(Database database) {
        assertThat(afterwards(database, "UPDATE paper SET dated = '2026-05-15' WHERE number = 'INV-2026-00002'"))
                .containsExactly("INV-2026-00002 was changed after it was issued: its row does not fit its seal",
                        "INV-2026-00002: the date is 2026-05-15 in the row, and 2026-05-14 in the data",
                        "paper \"INV-2026-00002\" is not as the trail has it: dated");
    }

    @ParameterizedTest
    @EnumSource
    void editedLine_isFound(Database database) {
        assertThat(afterwards(database, "UPDATE paper_line SET net_minor = net_minor + 100 WHERE position = 1"
                + " AND paper_id = (SELECT id FROM paper WHERE number = 'INV-2026-00003')"))
                .contains("INV-2026-00003 was changed after it was issued: its row does not fit its seal",
                        "INV-2026-00003: the lines together come to USD 114.00, not USD 113.00");
    }

    @ParameterizedTest
    @EnumSource
    void editedData_isFound(Database database) {
        assertThat(afterwards(database, "UPDATE paper SET data = 'nothing' WHERE number = 'INV-2026-00001'"))
                .containsExactly("INV-2026-00001 was changed after it was issued: its row does not fit its seal",
                        "INV-2026-00001: its data cannot be read: no paper of these tests",
                        "papers are found by 8 words that are not in their data");
    }

    @ParameterizedTest
    @EnumSource
    void rowWithAFittingSeal_showsInTheNext(Database database) {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            threePapers(book);
            connections.writer().useTransaction(handle -> {
                Tampering.unguard(database, handle);
                handle.execute("UPDATE paper SET rates_version = 'ours' WHERE number = 'INV-2026-00002'");
                PaperRow changed = PaperRows.byNumber(handle, "INV-2026-00002").orElseThrow();
                handle.execute("UPDATE paper SET seal = ? WHERE number = 'INV-2026-00002'", changed.seal());
            });

            assertThat(Books.audit(book).findings()).extracting(Problem::message).containsExactly(
                    "INV-2026-00003 does not follow the paper before it: one of the two was changed, or put in later",
                    "paper \"INV-2026-00002\" is not as the trail has it: seal");
        }
    }

    /** Every seal fits again, and so does the series; the papers bear what they were told when they were printed. */
    @ParameterizedTest
    @EnumSource
    void sealsReckonedAnew_areFoundByThePapersAndTheTrail(Database database) {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            threePapers(book);
            connections.writer().useTransaction(handle -> {
                Tampering.unguard(database, handle);
                handle.execute("UPDATE paper SET rates_version = 'ours' WHERE number = 'INV-2026-00001'");
                Tampering.reckonAnew(handle, Books.INVOICES, 3);
            });
            Folder.delete(new PaperFiles(place.papers()).seals().place());

            assertThat(Books.audit(book).findings()).extracting(Problem::message).containsExactly(
                    "the file of INV-2026-00002 bears another seal of the paper before it than the book: seals were"
                            + " reckoned anew",
                    "the file of INV-2026-00003 bears another seal of the paper before it than the book: seals were"
                            + " reckoned anew",
                    "paper \"INV-2026-00001\" is not as the trail has it: seal",
                    "paper \"INV-2026-00002\" is not as the trail has it: seal",
                    "paper \"INV-2026-00003\" is not as the trail has it: seal");
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The file is exchanged for one of another paper, with its hash in the row and all seals reckoned anew. */
    @ParameterizedTest
    @EnumSource
    void fileExchangedWithItsHash_isFoundByWhatItSays(Database database) throws IOException {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            threePapers(book);
            byte[] other = ("%PDF INV-2026-00009 " + Seal.NONE + " 1").getBytes(StandardCharsets.UTF_8);
            Files.write(new PaperFiles(place.papers()).place(Books.INVOICES, "INV-2026-00001"), other);
            connections.writer().useTransaction(handle -> {
                Tampering.unguard(database, handle);
                handle.execute("UPDATE paper SET pdf_hash = ? WHERE number = 'INV-2026-00001'", Hash.of(other));
                Tampering.reckonAnew(handle, Books.INVOICES, 3);
            });

            assertThat(Books.audit(book).findings()).extracting(Problem::message)
                    .contains("the file of INV-2026-00001 does not print that number");
        }
    }

    @ParameterizedTest
    @EnumSource
    void rowTakenOut_isFound(Database database) {
        assertThat(afterwards(database,
                "DELETE FROM paper_line WHERE paper_id = (SELECT id FROM paper WHERE number = 'INV-2026-00002')",
                "DELETE FROM paper WHERE number = 'INV-2026-00002'"))
                .containsExactly("INV-2026-00002 is missing", "papers are found by 8 words that are not in their data",
                        "paper \"INV-2026-00002\" is in the trail, and not in the book",
                        "the book knows of no such file");
    }

    @ParameterizedTest
    @EnumSource
    void lastRowTakenOut_isFound(Database database) {
        assertThat(afterwards(database,
                "DELETE FROM paper_line WHERE paper_id = (SELECT id FROM paper WHERE number = 'INV-2026-00003')",
                "DELETE FROM paper WHERE number = 'INV-2026-00003'"))
                .containsExactly("INV-2026-00003 is missing", "papers are found by 8 words that are not in their data",
                        "paper \"INV-2026-00003\" is in the trail, and not in the book",
                        "the book knows of no such file");
    }

    @ParameterizedTest
    @EnumSource
    void seriesTakenOut_isFound(Database database) {
        assertThat(afterwards(database, "DELETE FROM series WHERE kind = 'CREDIT_NOTE'"))
                .containsExactly("CN-2026-00001 belongs to no series");
    }

    @ParameterizedTest
    @EnumSource
    void seriesCountedBack_isFound(Database database) {
        assertThat(afterwards(database, "UPDATE series SET next = 3 WHERE kind = 'INVOICE'"))
                .containsExactly("series INV-2026 counts 2 papers, but holds 3");
    }

    @ParameterizedTest
    @EnumSource
    void files_areFoundMissingChangedAndStray(Database database) throws Exception {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            threePapers(book);
            PaperFiles files = new PaperFiles(place.papers());
            Path missing = files.place(Books.INVOICES, "INV-2026-00001");
            Path changed = files.place(Books.INVOICES, "INV-2026-00002");
            Path stray = changed.resolveSibling("notes.txt");
            Files.delete(missing);
            Files.writeString(changed, "%PDF of another");
            Files.writeString(stray, "call back");

            List<Problem> findings = Books.audit(book).findings();

            assertThat(findings).extracting(Problem::message).containsExactly("the file of INV-2026-00001 is missing",
                    "the file of INV-2026-00002 was changed after it was issued", "the book knows of no such file");
            assertThat(findings).extracting(finding -> finding.place().file()).containsExactly(missing.toString(),
                    changed.toString(), stray.toString());
            assertThat(book.read(reading -> reading.papers().pdf("INV-2026-00002")).problems())
                    .extracting(Problem::message).containsExactly("the file was changed after it was issued");
        }
    }

    /** Net 101 and tax 8 billed once, given back twice. */
    @ParameterizedTest
    @EnumSource
    void creditedTwice_isFound(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            threePapers(book);
            credit(book);

            assertThat(Books.audit(book).findings()).extracting(Problem::message).containsExactly(
                    "the credit notes of INV-2026-00001 give back USD 202 of the net, but it billed USD 101",
                    "the credit notes of INV-2026-00001 give back USD 16 of the tax of state, but it billed USD 8");
        }
    }

    /** The whole is given back, and its tax of 8 too, but the county's 2 as the state's. */
    @ParameterizedTest
    @EnumSource
    void creditedToTheWrongAuthority_isFoundAndRestoredAsItWasIssued(Database database) {
        PaperReader reader = Books.reading(json -> Books.READER.read(json)
                .map(read -> new PaperReader.Read(read.kind(), read.number(),
                        read.date(), read.due(), read.sums(), read.number().orElseThrow().startsWith("CN")
                                ? List.of(levied("state", 7), levied("county", 1))
                                : List.of(levied("state", 6), levied("county", 2)),
                        read.facts())));
        try (Book book = Books.open(database.place(shop.resolve("first")))) {
            threePapers(book);

            List<Problem> findings = book.audit(reader, Optional.empty(), Books.UNHEARD).orElseThrow().findings();

            assertThat(findings).extracting(Problem::message).containsExactly(
                    "the credit notes of INV-2026-00001 give back USD 7 of the tax of state, but it billed USD 6",
                    "the credit notes of INV-2026-00001 give back USD 1 of the tax of county, but it billed USD 2");
            Path backup = shop.resolve("backup.zip");
            book.backup(backup, reader, Optional.empty(), Books.UNHEARD).orElseThrow();
            assertThat(Book.restore(backup, BookPlace.inShop(shop.resolve("second")), reader, Books.UNHEARD)
                    .orElseThrow().findings()).isEqualTo(findings);
        }
    }

    private static PaperReader.Levied levied(String authority, int tax) {
        return new PaperReader.Levied(authority, Books.usd(tax));
    }

    private static void credit(Book book) {
        Books.issue(book, new Series(PaperKind.CREDIT_NOTE, PaperKind.CREDIT_NOTE.usualLetters(), "", 2026),
                Origin.NONE.correcting("INV-2026-00001"), 1)
                .orElseThrow();
    }

    private List<String> afterwards(Database database, String... statements) {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            threePapers(book);
            connections.writer().useTransaction(handle -> {
                Tampering.unguard(database, handle);
                for (String statement : statements) {
                    assertThat(handle.execute(statement)).as(statement).isPositive();
                }
            });
            return Books.audit(book).findings().stream().map(Problem::message).toList();
        }
    }

    /** Three invoices, the second of which is credited. */
    private static AuditReport threePapers(Book book) {
        for (int i = 1; i <= 3; i++) {
            Books.issue(book, i).orElseThrow();
        }
        credit(book);
        return Books.audit(book);
    }
}
