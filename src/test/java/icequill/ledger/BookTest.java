package icequill.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.Numbered;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.Series;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.ledger.store.Seal;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Issuing papers into a book. */
@Tag("wide")
class BookTest {

    private static final Problem OUT_OF_INK = new Problem(Code.TEMPLATE, Place.NOWHERE, "no ink", "ink");

    @TempDir
    private Path shop;

    @ParameterizedTest
    @EnumSource
    void issuedPapers_haveNumbersInOrderAndAChainOfSeals(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            IssuedPaper first = Books.issue(book, 1).orElseThrow();
            IssuedPaper second = Books.issue(book, 2).orElseThrow();

            assertThat(first.number()).isEqualTo("INV-2026-00001");
            assertThat(first.previousSeal()).isEqualTo("0".repeat(64));
            assertThat(second.number()).isEqualTo("INV-2026-00002");
            assertThat(second.previousSeal()).isEqualTo(first.seal()).isNotEqualTo(second.seal());
        }
    }

    @ParameterizedTest
    @EnumSource
    void issuedPaper_isReadBackAsItWasGiven(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            IssuedPaper issued = Books.issue(book, 7).orElseThrow();
            Numbered numbered = new Numbered(issued.number(), issued.previousSeal(), issued.issuedAt().toString());

            assertThat(book.read(reading -> reading.papers().show(issued.number())).orElseThrow()).isEqualTo(issued);
            assertThat(book.read(reading -> reading.papers().data(issued.number())).orElseThrow())
                    .isEqualTo(Books.printed(numbered, 7).json());
            assertThat(book.read(reading -> reading.papers().pdf(issued.number())).orElseThrow().bytes())
                    .isEqualTo(Books.pdf(numbered, 7));
            assertThat(issued.gross().orElseThrow().toString()).isEqualTo("USD 115");
            assertThat(issued.due().orElseThrow()).isEqualTo("2026-06-13");
        }
    }

    @ParameterizedTest
    @EnumSource
    void eachSeries_hasNumbersOfItsOwn(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            Books.issue(book, 1);

            assertThat(List
                    .of(new Series(PaperKind.INVOICE, PaperKind.INVOICE.usualLetters(), "north", 2026),
                            new Series(PaperKind.INVOICE, "INV", "", 2027),
                            new Series(PaperKind.CREDIT_NOTE, PaperKind.CREDIT_NOTE.usualLetters(), "", 2026))
                    .stream()
                    .map(series -> Books.issue(book, series, Origin.NONE, 1).orElseThrow().number()))
                    .containsExactly("INV-north-2026-00001", "INV-2027-00001", "CN-2026-00001");
        }
    }

    @ParameterizedTest
    @EnumSource
    void faultInPrinting_burnsNoNumberAndUndoesTheWhole(Database database) throws Exception {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            Validated<IssuedPaper> invalid = book.write(transaction -> {
                transaction.issue(Books.INVOICES, Origin.NONE, numbered -> Validated.valid(Books.printed(numbered, 1)));
                return transaction.issue(Books.INVOICES, Origin.NONE, numbered -> Validated.invalid(OUT_OF_INK));
            });

            assertThat(invalid.problems()).containsExactly(OUT_OF_INK);
            assertThat(new PaperFiles(place.papers()).unfinished()).isEmpty();
            assertThat(Books.issue(book, 2).orElseThrow().number()).isEqualTo("INV-2026-00001");
        }
    }

    @ParameterizedTest
    @EnumSource
    void faultInPrinting_thatTheCallerPassesOver_isNotStored(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            Validated<String> result = book.write(transaction -> {
                transaction.issue(Books.INVOICES, Origin.NONE, numbered -> Validated.invalid(OUT_OF_INK));
                return Validated.valid("all is well");
            });

            assertThat(result.problems()).containsExactly(OUT_OF_INK);
            assertThat(Books.issue(book, 2).orElseThrow().position()).isEqualTo(1);
        }
    }

    /** What one transaction stores in turn is what one transaction each stores; that one of them is at fault leaves no gap. */
    @ParameterizedTest
    @EnumSource
    void worksInTurn_storeWhatEachAloneStores(Database database) throws Exception {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            List<Validated<IssuedPaper>> papers = book.write(transaction -> Validated.valid(transaction.inTurn(List.of(
                    issuing(1), none -> Validated.invalid(OUT_OF_INK), issuing(2), issuing(3)))))
                    .orElseThrow();

            assertThat(papers.get(1).problems()).containsExactly(OUT_OF_INK);
            assertThat(Books.issue(book, 4).orElseThrow().number()).isEqualTo("INV-2026-00004");
            String seal = Seal.NONE;
            for (int seed = 1; seed <= 4; seed++) {
                IssuedPaper paper = Books.found(book, "PO-" + (4710 + seed)).getFirst();
                assertThat(paper.previousSeal()).isEqualTo(seal);
                seal = paper.seal();
                byte[] alone = Books.pdf(new Numbered(paper.number(), paper.previousSeal(), ""), seed);
                assertThat(Files.readAllBytes(new PaperFiles(place.papers()).place(paper.series(), paper.number())))
                        .isEqualTo(alone);
            }
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void faultInPrintingOneOfSeveral_undoesAll(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            Validated<List<Validated<IssuedPaper>>> papers = book.write(transaction -> Validated.valid(transaction
                    .inTurn(List.of(issuing(1), open -> open.issue(Books.INVOICES, Origin.NONE,
                            numbered -> Validated.invalid(OUT_OF_INK)), issuing(2)))));

            assertThat(papers.problems()).containsExactly(OUT_OF_INK);
            assertThat(Books.issue(book, 2).orElseThrow().number()).isEqualTo("INV-2026-00001");
        }
    }

    private static Function<Transaction, Validated<IssuedPaper>> issuing(int seed) {
        return open -> open.issue(Books.INVOICES, Origin.NONE,
                numbered -> Validated.valid(Books.printed(numbered, seed)));
    }

    @ParameterizedTest
    @EnumSource
    void exceptionInPrinting_leavesNothing(Database database) throws Exception {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            assertThatThrownBy(() -> book.write(transaction -> {
                transaction.issue(Books.INVOICES, Origin.NONE, numbered -> Validated.valid(Books.printed(numbered, 1)));
                throw new IllegalStateException("a fault of the program");
            })).isInstanceOf(IllegalStateException.class);

            assertThat(new PaperFiles(place.papers()).unfinished()).isEmpty();
            assertThat(book.read(reading -> Validated.valid(reading.papers().newest(Books.INVOICES))).orElseThrow())
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void errorInPrinting_leavesNothing(Database database) throws Exception {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            assertThatThrownBy(() -> book.write(transaction -> {
                transaction.issue(Books.INVOICES, Origin.NONE, numbered -> Validated.valid(Books.printed(numbered, 1)));
                throw new StackOverflowError("a template without end");
            })).isInstanceOf(StackOverflowError.class).hasNoSuppressedExceptions();

            assertThat(new PaperFiles(place.papers()).unfinished()).isEmpty();
            assertThat(Books.issue(book, 2).orElseThrow().number()).isEqualTo("INV-2026-00001");
        }
    }

    @ParameterizedTest
    @EnumSource
    void reasons_refuseToChange(Database database) {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            Entered.all(book);
            String visit = Books.read(book, reading -> reading.entries().visits()).getFirst().id();
            String paper = Books.issue(book, 1).orElseThrow().number();
            book.write(open -> {
                open.register().backdated(paper, "a holiday");
                return open.register().withdraw(visit, "recorded twice");
            }).orElseThrow();

            for (String table : List.of("visit_withdrawn", "paper_backdated")) {
                for (String change : List.of("UPDATE " + table + " SET reason = 'another'",
                        "UPDATE " + table + " SET reason = ''", "DELETE FROM " + table)) {
                    assertThatThrownBy(
                            () -> connections.writer().useHandle(handle -> handle.execute(change)))
                            .as(change).hasStackTraceContaining("never");
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void creditAndNewInvoice_areIssuedInOneStep(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            String wrong = Books.issue(book, 1).orElseThrow().number();

            IssuedPaper again = book.write(transaction -> transaction
                    .issue(new Series(PaperKind.CREDIT_NOTE, PaperKind.CREDIT_NOTE.usualLetters(), "", 2026),
                            Origin.NONE.correcting(wrong),
                            numbered -> Validated.valid(Books.printed(numbered, 1)))
                    .then(credit -> transaction.issue(Books.INVOICES, Origin.NONE.replacing(wrong),
                            numbered -> Validated.valid(Books.printed(numbered, 2)))))
                    .orElseThrow();

            assertThat(again.origin().replaces()).contains(wrong);
            assertThat(book.read(reading -> Validated.valid(reading.papers().creditsOf(wrong))).orElseThrow())
                    .extracting(IssuedPaper::number).containsExactly("CN-2026-00001");
        }
    }

    @ParameterizedTest
    @EnumSource
    void storedPaper_refusesToChange(Database database) {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            Books.issue(book, 1);

            for (String change : List.of("UPDATE paper SET dated = '2026-01-01'", "DELETE FROM paper",
                    "UPDATE paper_line SET net_minor = 1", "DELETE FROM paper_line")) {
                assertThatThrownBy(() -> connections.writer().useHandle(handle -> handle.execute(change)))
                        .as(change).hasStackTraceContaining("an issued paper never");
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void reopenedBook_goesOn(Database database) {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place)) {
            Books.issue(book, 1);
        }
        try (Book book = Books.open(place)) {
            assertThat(Books.issue(book, 2).orElseThrow().number()).isEqualTo("INV-2026-00002");
        }
    }
}
