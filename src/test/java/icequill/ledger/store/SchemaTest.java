package icequill.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.ledger.Book;
import icequill.ledger.Books;
import icequill.ledger.Database;
import icequill.ledger.Entered;
import icequill.ledger.entries.Withdrawal;
import icequill.ledger.trail.TrailQuestion;
import icequill.ledger.trail.TrailRow;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Books of every earlier schema become books of this one. */
@Tag("wide")
class SchemaTest {

    private static final Path MIGRATIONS = Path.of("src/main/resources/icequill/ledger");
    private static final int WITHOUT_FORGETTING = 4;

    @TempDir
    private Path shop;

    static Stream<Arguments> earlier() {
        return Stream.of(Database.values()).flatMap(database -> IntStream.range(1, Schema.NEWEST)
                .mapToObj(version -> Arguments.of(database, version)));
    }

    @ParameterizedTest
    @MethodSource("earlier")
    void earlierBook_isBroughtUpToDateWithAllThatIsInIt(Database database, int version) throws IOException {
        BookPlace place = database.place(shop);
        Files.createDirectories(shop.resolve("book"));
        try (Connections connections = Connections.to(place)) {
            Schema.migrate(connections, 1);
            connections.writer().useTransaction(SchemaTest::insertGroup);
            Schema.migrate(connections, version);
            assertThat(Schema.version(connections.writer())).isEqualTo(version);
        }

        try (Book book = Books.open(place); Connections connections = Connections.to(place)) {
            assertThat(Schema.version(connections.writer())).isEqualTo(Schema.NEWEST);
            assertThat(Books.read(book, reading -> reading.entries().customers())).containsExactly(Entered.group());
            Books.issue(book, 1).orElseThrow();
            assertThat(Books.audit(book).findings()).isEmpty();
            assertThat(Books.read(book, reading -> reading.trail().find(new TrailQuestion(Optional.of("oven-group"),
                    Optional.empty(), Optional.empty(), Optional.empty(), 9)))).extracting(TrailRow::event)
                    .containsExactly("TAKEN_OVER");
            assertThatThrownBy(() -> connections.writer().useHandle(handle -> handle.execute("DELETE FROM paper")))
                    .hasStackTraceContaining("an issued paper never");
        }
    }

    /** Who was forgotten before withdrawals could be. */
    @ParameterizedTest
    @EnumSource
    void withdrawalOfAForgottenCustomer_isForgottenWithIt(Database database) throws IOException {
        BookPlace place = database.place(shop);
        Files.createDirectories(shop.resolve("book"));
        try (Connections connections = Connections.to(place)) {
            Schema.migrate(connections, WITHOUT_FORGETTING);
            connections.writer().useTransaction(handle -> {
                handle.execute("INSERT INTO customer (id, name, claims_exemption, forgotten_on)"
                        + " VALUES ('crumb-lane', '', 0, '2026-05-14')");
                handle.execute("INSERT INTO site (id, customer_id, name, street, city, region, postal_code, country,"
                        + " data)"
                        + " VALUES ('bakery', 'crumb-lane', '', '', '', '', '', 'US', '')");
                handle.execute(
                        "INSERT INTO visit (id, site_id, began, ended, data, recorded_at) VALUES ('spring', 'bakery',"
                                + " '2026-05-13T09:00-04:00[America/New_York]', '2026-05-13T10:00-04:00[America/New_York]', '',"
                                + " '2026-05-13T15:00:00Z')");
                handle.execute("INSERT INTO visit_withdrawn (visit_id, withdrawn_at, reason)"
                        + " VALUES ('spring', '2026-05-14T16:00:00Z', 'Mrs. Baker says no')");
            });
        }

        try (Book book = Books.open(place)) {
            assertThat(Books.read(book, reading -> List.of(reading.entries().withdrawal("spring").orElseThrow())))
                    .containsExactly(new Withdrawal(Books.CLOCK.instant(), ""));
        }
    }

    @Test
    void newestVersion_isThatOfTheLastMigration() throws IOException {
        for (String database : List.of("sqlite", "postgresql")) {
            List<Integer> versions = Stream.of("both", database).flatMap(SchemaTest::versions).sorted().toList();

            assertThat(versions).as(database)
                    .isEqualTo(IntStream.rangeClosed(1, Schema.NEWEST).boxed().toList());
        }
    }

    /** As the first version wrote it. */
    private static void insertGroup(Handle handle) {
        handle.execute("INSERT INTO customer (id, name, language, vendor_number, payment_days, claims_exemption,"
                + " accepted_on, accepted_paper) VALUES ('oven-group', 'Oven Group', 'en', 'V-3310', 20, 1,"
                + " '2026-01-04', 'price sheet of 2026')");
        handle.execute("INSERT INTO customer_bill_to VALUES ('oven-group', '', NULL, 'Oven Group', 'Accounts payable',"
                + " '88 Quarry Road', 'Fernhill', 'NY', '12501', 'US', 'ap@example.com', NULL)");
        handle.execute("INSERT INTO customer_certificate VALUES ('oven-group', 0, 'RESALE', 'RC-1', 'NY', 'resale',"
                + " '2026-01-05', '2028-12-31')");
    }

    private static Stream<Integer> versions(String folder) {
        try (Stream<Path> files = Files.list(MIGRATIONS.resolve(folder))) {
            return files.map(file -> String.valueOf(file.getFileName()).replaceFirst("V(\\d+)__.*", "$1"))
                    .map(Integer::valueOf).toList().stream();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
