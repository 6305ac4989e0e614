package icequill.ledger.care;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.files.disk.Hash;
import icequill.ledger.Book;
import icequill.ledger.Books;
import icequill.ledger.Database;
import icequill.ledger.Entered;
import icequill.ledger.Tampering;
import icequill.ledger.papers.SealLine;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.ledger.store.Schema;
import icequill.problem.Problem;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Somebody who may do all that the database allows changes the trail, or something else past it. The trail of these books: 1 the book,
 * 2 the group, 3 the bakery, 4 its site, 5 the machine, 6 the visit, 7 the group's days to pay from 20 to 30.
 */
@Tag("wide")
class TrailAttackTest {

    private static final int WITHOUT_TRAIL = 5;
    private static final String COLUMNS = "noted_at, who, office, kind, entry, event, before_of, before_hash, after_of,"
            + " after_hash, previous_seal, seal";

    @TempDir
    private Path shop;

    /** What somebody does, and what an audit says of it. */
    record Attack(String name, List<String> statements, List<String> findings) {

        @Override
        public String toString() {
            return name;
        }
    }

    private static final List<Attack> ATTACKS = List.of(
            new Attack("row changed", List.of("UPDATE trail SET who = 'bea' WHERE number = 4"),
                    List.of("row 4 of the trail was changed: it does not fit its seal")),
            new Attack("first row taken out", takenOut(1),
                    List.of("rows of the trail are missing between 0 and 2", "book \"book\" is not in the trail")),
            new Attack("row taken out", takenOut(4),
                    List.of("rows of the trail are missing between 3 and 5",
                            "site \"crumb-lane-bakery\" is not in the trail")),
            new Attack("last row taken out", takenOut(7),
                    List.of("customer \"oven-group\" is not as the trail has it: paymentDays")),
            new Attack("all taken out", List.of("DELETE FROM trail_value", "DELETE FROM trail"),
                    List.of("customer \"crumb-lane\" is not in the trail",
                            "customer \"oven-group\" is not in the trail",
                            "site \"crumb-lane-bakery\" is not in the trail",
                            "machine \"crumb-lane-bakery/flaker\" is not in the trail",
                            "visit \"spring-cleaning\" is not in the trail")),
            new Attack("row put in", List.of(copied(4, 8)),
                    List.of("what row 8 of the trail says is missing, and its customer was not forgotten",
                            "row 8 of the trail does not follow the one before it: one of the two was changed, or put"
                                    + " in later",
                            "row 8 of the trail was changed: it does not fit its seal",
                            "site \"crumb-lane-bakery\" was changed past the trail before row 8 of the trail",
                            "what row 8 of the trail says is missing, though site \"crumb-lane-bakery\" is still so")),
            new Attack("rows in another order",
                    Stream.of(moved(5, 100), moved(6, 5), moved(100, 6)).flatMap(List::stream).toList(),
                    List.of("row 5 of the trail does not follow the one before it: one of the two was changed, or put"
                            + " in later",
                            "row 5 of the trail was changed: it does not fit its seal",
                            "row 6 of the trail does not follow the one before it: one of the two was changed, or put"
                                    + " in later",
                            "row 6 of the trail was changed: it does not fit its seal",
                            "row 7 of the trail does not follow the one before it: one of the two was changed, or put"
                                    + " in later")),
            new Attack("value changed",
                    List.of("UPDATE trail_value SET data = replace(data, '\"paymentDays\":20', '\"paymentDays\":60')"
                            + " WHERE trail_number = 7 AND side = 'before'"),
                    List.of("what row 7 of the trail says was changed",
                            "customer \"oven-group\" was changed past the trail before row 7 of the trail")),
            new Attack("value taken out", List.of("DELETE FROM trail_value WHERE trail_number = 7 AND side = 'before'"),
                    List.of("what row 7 of the trail says is missing, and its customer was not forgotten")),
            new Attack("value taken out as if he were forgotten",
                    List.of("UPDATE customer SET forgotten_on = '2026-05-14' WHERE id = 'crumb-lane'",
                            "DELETE FROM trail_value WHERE trail_number = 4"),
                    List.of("what row 4 of the trail says is missing, though site \"crumb-lane-bakery\" is still so",
                            "customer \"crumb-lane\" is not as the trail has it: forgottenOn")),
            new Attack("value put in",
                    List.of("INSERT INTO trail_value (trail_number, side, salt, data) VALUES (4, 'before', '', '{}')"),
                    List.of("what row 4 of the trail says was changed")),
            new Attack("entry changed past the trail", List.of("UPDATE site SET city = 'Easton'"),
                    List.of("site \"crumb-lane-bakery\" is not as the trail has it: city")),
            new Attack("entry taken out past the trail", List.of("DELETE FROM machine"),
                    List.of("machine \"crumb-lane-bakery/flaker\" is in the trail, and not in the book")),
            new Attack("entry put in past the trail",
                    List.of("INSERT INTO customer (id, name, claims_exemption) VALUES ('nobody', 'Nobody', 0)"),
                    List.of("customer \"nobody\" is not in the trail")));

    static Stream<Arguments> attacks() {
        return Stream.of(Database.values())
                .flatMap(database -> ATTACKS.stream().map(attack -> Arguments.of(database, attack)));
    }

    @ParameterizedTest
    @MethodSource("attacks")
    void whateverIsDoneToIt_isFound(Database database, Attack attack) {
        BookPlace place = database.place(shop);
        filled(place);

        tamper(database, place, attack.statements());

        try (Book book = Books.open(place)) {
            assertThat(messages(book)).containsExactlyInAnyOrderElementsOf(attack.findings());
        }
    }

    /** The next change would cover it up, if a row did not say what it found. */
    @ParameterizedTest
    @EnumSource
    void whatWasChangedPastTheTrail_isFoundAfterTheNextChangeToo(Database database) {
        BookPlace place = database.place(shop);
        filled(place);
        tamper(database, place, List.of("UPDATE customer SET payment_days = 60 WHERE id = 'oven-group'"));

        try (Book book = Books.open(place)) {
            book.write(transaction -> transaction.register().change(Entered.group(45))).orElseThrow();

            assertThat(messages(book))
                    .containsExactly("customer \"oven-group\" was changed past the trail before row 8 of the trail");
        }
    }

    @ParameterizedTest
    @EnumSource
    void trailMadeAnewSoThatItFitsItself_isFoundByWhatWasKeptElsewhere(Database database) {
        BookPlace place = database.place(shop);
        filled(place);
        Path backup = shop.resolve("kept.zip");
        String line;
        try (Book book = Books.open(place)) {
            AuditReport report = Books.audit(book);
            line = SealLine.of(report.heads(), report.trail()).text();
            book.backup(backup, Books.READER, Optional.empty(), Books.UNHEARD).orElseThrow();
            assertThat(line).startsWith("icequill-seal trail-7 ");
            assertThat(against(book, backup.toString(), line)).isEmpty();
        }

        tamper(database, place, List.of("UPDATE trail SET who = 'bea' WHERE number = 4"));
        try (Connections connections = Connections.to(place)) {
            connections.writer().useTransaction(Tampering::reckonTrailAnew);
        }

        try (Book book = Books.open(place)) {
            assertThat(messages(book)).isEmpty();
            assertThat(against(book, backup.toString(), line)).containsExactly(
                    "the trail bears another seal at row 7 than in the backup: it, or a row before it, was changed or"
                            + " taken out",
                    "the seals up to trail-7 are others than were noted");
        }
    }

    /** Made by a program that knew no trail. */
    @ParameterizedTest
    @EnumSource
    void backupOfABookWithoutTrail_isRestoredAndTakenOver(Database database) throws IOException {
        BookPlace old = database.place(shop.resolve("old"));
        Files.createDirectories(shop.resolve("old/book"));
        Path backup = shop.resolve("old.zip");
        try (Connections connections = Connections.to(old)) {
            Schema.migrate(connections, WITHOUT_TRAIL);
            connections.writer().useTransaction(handle -> {
                handle.execute("INSERT INTO customer (id, name, claims_exemption) VALUES ('mill', 'Mill', 0)");
                write(handle, backup);
            });
        }

        BookPlace place = database.place(shop.resolve("new"));
        assertThat(Book.restore(backup, place, Books.READER, Books.UNHEARD).orElseThrow().findings()).isEmpty();
        try (Book book = Books.open(place)) {
            assertThat(messages(book)).isEmpty();
            assertThat(Books.audit(book).trail().rows()).isEqualTo(2);
        }
    }

    private static void filled(BookPlace place) {
        try (Book book = Books.open(place)) {
            Entered.all(book);
            book.write(transaction -> transaction.register().change(Entered.group(30))).orElseThrow();
            assertThat(messages(book)).isEmpty();
        }
    }

    private static void tamper(Database database, BookPlace place, List<String> statements) {
        try (Connections connections = Connections.to(place)) {
            connections.writer().useTransaction(handle -> {
                Tampering.unguard(database, handle);
                statements.forEach(handle::execute);
            });
        }
    }

    private static List<String> messages(Book book) {
        return Books.audit(book).findings().stream().map(Problem::message).toList();
    }

    private static List<String> against(Book book, String... kept) {
        return book.against(List.of(kept), Books.READER).orElseThrow().stream().map(Problem::message).toList();
    }

    private static List<String> takenOut(int number) {
        return List.of("DELETE FROM trail_value WHERE trail_number = " + number,
                "DELETE FROM trail WHERE number = " + number);
    }

    private static String copied(int from, int to) {
        return "INSERT INTO trail (number, " + COLUMNS + ") SELECT " + to + ", " + COLUMNS
                + " FROM trail WHERE number = " + from;
    }

    private static List<String> moved(int from, int to) {
        return List.of(copied(from, to),
                "UPDATE trail_value SET trail_number = " + to + " WHERE trail_number = " + from,
                "DELETE FROM trail WHERE number = " + from);
    }

    private static void write(Handle handle, Path file) {
        try (OutputStream out = Files.newOutputStream(file); ZipOutputStream zip = new ZipOutputStream(out)) {
            Map<String, String> hashes = new TreeMap<>();
            for (Archive.Table table : Archive.tables(WITHOUT_TRAIL)) {
                byte[] lines = lines(handle, table).getBytes(StandardCharsets.UTF_8);
                hashes.put(table.name(), Hash.of(lines));
                zip.putNextEntry(new ZipEntry(table.entry()));
                zip.write(lines);
            }
            zip.putNextEntry(new ZipEntry(Archive.CONTENTS));
            zip.write(Archive.JSON.writeValueAsBytes(Map.of("format", Archive.FORMAT, "schema", WITHOUT_TRAIL,
                    "written", "2026-05-14T16:00:00Z", "papers", 0, "heads", List.of(), "hashes", hashes, "missing",
                    List.of(), "findings", List.of())));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static String lines(Handle handle, Archive.Table table) {
        StringBuilder lines = new StringBuilder();
        handle.createQuery("SELECT * FROM " + table.name()).scanResultSet((rows, context) -> {
            try (context; ResultSet all = rows.get()) {
                int count = all.getMetaData().getColumnCount();
                List<Object> line = new ArrayList<>();
                for (int i = 1; i <= count; i++) {
                    line.add(all.getMetaData().getColumnName(i));
                }
                lines.append(Archive.JSON.writeValueAsString(line)).append('\n');
                while (all.next()) {
                    for (int i = 1; i <= count; i++) {
                        line.set(i - 1, all.getObject(i));
                    }
                    lines.append(Archive.JSON.writeValueAsString(line)).append('\n');
                }
            }
            return table;
        });
        return lines.toString();
    }
}
