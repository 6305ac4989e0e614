package icequill.ledger.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.files.pricing.RatesVersion;
import icequill.ledger.Book;
import icequill.ledger.Books;
import icequill.ledger.Database;
import icequill.ledger.Entered;
import icequill.ledger.Tampering;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.ledger.trail.TrailQuestion;
import icequill.ledger.trail.TrailRow;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Versions of the rates in a book: adopted, kept, sealed. */
@Tag("wide")
public class StoredRatesTest {

    public static final RatesVersion FIRST = RatesVersion.of(Map.of("shop.yaml", text("name: Quern & Tabb\n"),
            "pricing/labor.yaml", text("hourly: 98.00 # común\n")));
    /** With a file that is no text, and one that only looks like one. */
    public static final RatesVersion SECOND = RatesVersion.of(Map.of("shop.yaml", text("name: Quern & Tabb\n"),
            "pricing/labor.yaml", text("hourly: 108.00\n"), "logo.png", new byte[]{(byte) 0x89, 'P', 'N', 'G', 0, -1},
            "templates/odd.ftlh", text("a\0b"), "templates/empty.ftlh", text("")));

    @TempDir
    private Path shop;

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** The ids were worked out by sha256sum over each file's name, length and bytes, in the order of names. */
    @ParameterizedTest
    @EnumSource
    void versions_areKeptOnceAndCameIntoForceInTurn(Database database) {
        try (Book book = Books.open(database.place(shop))) {
            assertThat(Books.read(book, open -> open.rates().inForce().stream().toList())).isEmpty();
            for (RatesVersion version : List.of(FIRST, FIRST, SECOND, FIRST)) {
                adopt(book, version);
            }

            List<Adoption> adoptions = Books.read(book, open -> open.rates().adoptions());
            assertThat(adoptions).extracting(Adoption::number).containsExactly(3L, 2L, 1L);
            assertThat(adoptions).extracting(Adoption::version).containsExactly("c3d9cd5aeb216a31", "5ff6b477c493e60c",
                    "c3d9cd5aeb216a31");
            assertThat(adoptions).allSatisfy(adoption -> {
                assertThat(adoption.who()).isEqualTo("ann");
                assertThat(adoption.at()).isEqualTo(Books.CLOCK.instant());
            });
            assertThat(stored(book, SECOND)).isEqualTo(SECOND.hash());
            assertThat(Books.read(book, open -> open.rates().version("none").stream().toList())).isEmpty();
            assertThat(Books.read(book, open -> open.trail().find(new TrailQuestion(Optional.of("c3d9cd5aeb216a31"),
                    Optional.empty(), Optional.empty(), Optional.empty(), 9)))).extracting(TrailRow::event)
                    .containsExactly("ADOPTED", "ADOPTED");
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void backup_restoresVersionsAndForgettingLeavesThem(Database database) {
        Path file = shop.resolve("kept.backup");
        try (Book book = Books.open(database.place(shop.resolve("one")))) {
            Entered.all(book);
            adopt(book, FIRST);
            adopt(book, SECOND);
            book.write(open -> open.erasure().forget("crumb-lane", LocalDate.of(2026, 5, 15))).orElseThrow();
            assertThat(Books.audit(book).findings()).isEmpty();
            assertThat(book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow().findings())
                    .isEmpty();
        }

        for (Database other : Database.values()) {
            BookPlace place = other.place(shop.resolve("again-" + other));
            Book.restore(file, place, Books.READER, Books.UNHEARD).orElseThrow();
            try (Book book = Books.open(place)) {
                assertThat(stored(book, FIRST)).isEqualTo(FIRST.hash());
                assertThat(stored(book, SECOND)).isEqualTo(SECOND.hash());
                assertThat(Books.read(book, open -> List.of(open.rates().inForce().orElseThrow().version())))
                        .containsExactly(SECOND.id());
                assertThat(Books.audit(book).findings()).isEmpty();
            }
        }
    }

    /** A book that has nothing but rates is no place for a restore. */
    @ParameterizedTest
    @EnumSource
    void restore_overRates_isRefused(Database database) {
        Path file = shop.resolve("kept.backup");
        try (Book book = Books.open(Database.SQLITE.place(shop.resolve("one")))) {
            book.backup(file, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow();
        }
        BookPlace place = database.place(shop.resolve("two"));
        try (Book book = Books.open(place)) {
            adopt(book, FIRST);
        }

        assertThat(Book.restore(file, place, Books.READER, Books.UNHEARD).problems()).extracting(Problem::message)
                .singleElement().asString().contains("there is a book already");
    }

    @ParameterizedTest
    @CsvSource({"SQLITE, UPDATE rates_file SET content = 'hourly: 1.00'",
            "POSTGRESQL, UPDATE rates_file SET content = 'hourly: 1.00'", "SQLITE, DELETE FROM rates_adopted",
            "POSTGRESQL, DELETE FROM rates_adopted", "SQLITE, DELETE FROM rates_version",
            "POSTGRESQL, DELETE FROM rates_version"})
    void change_byStatement_isRefused(Database database, String statement) {
        BookPlace place = database.place(shop);
        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            adopt(book, FIRST);

            assertThatThrownBy(() -> connections.writer().useHandle(handle -> handle.execute(statement)))
                    .hasStackTraceContaining("a version of the rates never");
        }
    }

    /** A price lowered, a file put in, a file taken out, by somebody who takes the guards away. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "UPDATE rates_file SET content = replace(content, '98', '89')",
            "INSERT INTO rates_file VALUES ('c3d9cd5aeb216a31', 'pricing/more.yaml', 'text', '')",
            "DELETE FROM rates_file WHERE name = 'shop.yaml'"})
    void changedFile_isFound(String statement) {
        BookPlace place = Database.SQLITE.place(shop);
        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            adopt(book, FIRST);
            connections.writer().useHandle(handle -> {
                Tampering.unguard(Database.SQLITE, handle);
                handle.execute(statement);
            });

            assertThat(Books.audit(book).findings()).extracting(Problem::message)
                    .containsExactly("version c3d9cd5aeb216a31 of the rates is not as it was adopted");
        }
    }

    private static void adopt(Book book, RatesVersion version) {
        book.write(open -> Validated.valid(open.adopt(version))).orElseThrow();
    }

    private static String stored(Book book, RatesVersion version) {
        return Books.read(book, open -> List.of(open.rates().version(version.id()).orElseThrow().hash())).getFirst();
    }
}
