package icequill.ledger.care;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Book;
import icequill.ledger.Books;
import icequill.ledger.Database;
import icequill.ledger.Entered;
import icequill.ledger.Tampering;
import icequill.ledger.find.PaperFilter;
import icequill.ledger.papers.Origin;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.Series;
import icequill.ledger.papers.StoredRatesTest;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Schema;
import icequill.problem.Validated;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every cell of a small book is changed, one at a time, to several values, by somebody who may do all that the database allows: nothing
 * crashes, and each change is found, since all that is entered or issued is sealed, made from what is sealed, or in the trail.
 */
@Tag("wide")
class EveryCellAttackTest {

    private static final List<String> TEXTS = List.of("", "99999999999999999999", "../../x");
    private static final List<Long> NUMBERS = List.of(-1L, 2_000_000_000L, Long.MAX_VALUE);

    @TempDir
    private Path shop;

    /** A cell, by the values of its row. */
    private record Cell(String table, List<String> columns, List<@Nullable Object> row, int index) {

        String name() {
            return table + "." + columns.get(index);
        }

        /** Of the row when this cell holds a value. */
        List<@Nullable Object> with(@Nullable Object value) {
            List<@Nullable Object> changed = new ArrayList<>(row);
            changed.set(index, value);
            return changed;
        }
    }

    /** Every third cell to one of its values, by turns; on a server every ninth. */
    @ParameterizedTest
    @CsvSource({"SQLITE, 3, 100", "POSTGRESQL, 9, 30"})
    void changedCell_crashesNothingAndIsFound(Database database, int step, int least) throws SQLException {
        assertFound(database, step, 1, least);
    }

    @Tag("long")
    @ParameterizedTest
    @EnumSource
    void cellChangedToEachValue_crashesNothingAndIsFound(Database database) throws SQLException {
        assertFound(database, 1, Integer.MAX_VALUE, 1000);
    }

    /** @param step which cells: every so many-th, to so many values, at least so many in all */
    private void assertFound(Database database, int step, int most, int least) throws SQLException {
        BookPlace place = database.place(shop);
        List<String> wrong = new ArrayList<>();
        int changes = 0;
        try (Book book = Books.open(place)) {
            Entered.all(book);
            book.write(open -> Validated.valid(open.adopt(StoredRatesTest.FIRST))).orElseThrow();
            book.write(open -> Validated.valid(open.adopt(StoredRatesTest.SECOND))).orElseThrow();
            book.write(open -> Validated.valid(open.adopt(StoredRatesTest.FIRST))).orElseThrow();
            Books.issue(book, 1).orElseThrow();
            Books.issue(book, new Series(PaperKind.CREDIT_NOTE, PaperKind.CREDIT_NOTE.usualLetters(), "", 2026),
                    Origin.NONE.correcting("INV-2026-00001"), 1)
                    .orElseThrow();
            Entered.paid(book);
            Entered.accepted(book, 1);
            Connection connection = free(database, place);
            List<Cell> cells = cells(connection);
            for (int i = 0; i < cells.size(); i += step) {
                Cell cell = cells.get(i);
                List<@Nullable Object> values = values(cell);
                for (int k = 0; k < Math.min(most, values.size()); k++) {
                    Object value = values.get((k + i / step) % values.size());
                    if (change(connection, cell, cell.row(), value)) {
                        changes++;
                        Optional<String> outcome = outcome(book);
                        outcome.ifPresent(
                                what -> wrong.add(cell.name() + " = " + value + " in " + cell.row() + ": " + what));
                        assertThat(change(connection, cell, cell.with(value), cell.row().get(cell.index()))).isTrue();
                    }
                }
            }
            connection.close();
            assertThat(wrong).isEmpty();
            assertThat(changes).isGreaterThan(least);
            assertThat(Books.audit(book).findings()).isEmpty();
        }
    }

    /** What should not have happened. */
    private static Optional<String> outcome(Book book) {
        try {
            Validated<AuditReport> audit = book.audit(Books.READER, Optional.empty(), Books.UNHEARD);
            book.read(reading -> {
                reading.papers().each(paper -> {
                });
                return Validated.valid(reading.papers().find("crumb", PaperFilter.NONE, 9));
            });
            book.read(reading -> Validated.valid(reading.entries().customers()));
            book.read(reading -> Validated.valid(reading.entries().sites()));
            book.read(reading -> Validated.valid(reading.entries().machines()));
            book.read(reading -> Validated.valid(reading.entries().visits()));
            book.read(reading -> Validated.valid(reading.entries().stepsAt("crumb-lane-bakery")));
            book.read(reading -> Validated.valid(reading.accounts().payments()));
            book.read(reading -> Validated.valid(reading.accounts().accounts()));
            boolean silent = audit.problems().isEmpty() && audit.orElseThrow().findings().isEmpty();
            return silent ? Optional.of("not found") : Optional.empty();
        } catch (RuntimeException crash) {
            return Optional.of("crash: " + crash + " at " + Stream.of(crash.getStackTrace())
                    .filter(line -> line.getClassName().startsWith("icequill")).findFirst().orElse(null));
        }
    }

    /** Connects without what holds rows together. */
    private static Connection free(Database database, BookPlace place) throws SQLException {
        Connection connection = DriverManager.getConnection(switch (place) {
        case BookPlace.InFile(Path file, Path papers) -> "jdbc:sqlite:" + file;
        case BookPlace.OnServer(String url, Path papers) -> url;
        });
        try (Statement statement = connection.createStatement()) {
            switch (database) {
            case SQLITE -> {
                statement.execute("PRAGMA foreign_keys = OFF");
                for (String trigger : Tampering.TRIGGERS) {
                    statement.execute("DROP TRIGGER " + trigger);
                }
            }
            case POSTGRESQL -> statement.execute("SET session_replication_role = replica");
            }
        }
        return connection;
    }

    private static List<Cell> cells(Connection connection) throws SQLException {
        List<Cell> cells = new ArrayList<>();
        for (Archive.Table table : Archive.tables(Schema.NEWEST)) {
            try (Statement statement = connection.createStatement();
                    ResultSet rows = statement
                            .executeQuery("SELECT * FROM " + table.name() + " ORDER BY " + table.order())) {
                List<String> columns = new ArrayList<>();
                for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
                    columns.add(rows.getMetaData().getColumnName(i));
                }
                while (rows.next()) {
                    List<@Nullable Object> row = new ArrayList<>();
                    for (int i = 1; i <= columns.size(); i++) {
                        row.add(rows.getObject(i));
                    }
                    for (int i = 0; i < columns.size(); i++) {
                        cells.add(new Cell(table.name(), columns, row, i));
                    }
                }
            }
        }
        return cells;
    }

    /** Values that differ from the one that is there. */
    private static List<@Nullable Object> values(Cell cell) {
        @Nullable
        Object old = cell.row().get(cell.index());
        List<@Nullable Object> values = new ArrayList<>();
        if (cell.table().endsWith("_word")) {
            // Enough for the many.
            return List.of(old instanceof Number number ? number.longValue() + 1 : old + "x");
        }
        values.add(null);
        if (old instanceof Number number) {
            values.addAll(NUMBERS);
            values.add(number.longValue() + 1);
        }
        values.addAll(TEXTS);
        values.add(old + "x");
        return values.stream().filter(value -> !Objects.equals(String.valueOf(value), String.valueOf(old)))
                .distinct().toList();
    }

    /** Whether the database let it happen; empty texts in empty cells are no change that it would tell apart. */
    private static boolean change(Connection connection, Cell cell, List<@Nullable Object> row, @Nullable Object value)
            throws SQLException {
        StringBuilder where = new StringBuilder();
        List<@Nullable Object> bound = new ArrayList<>();
        bound.add(value);
        Set<String> keys = keys(connection, cell.table());
        for (int i = 0; i < cell.columns().size(); i++) {
            if (keys.contains(cell.columns().get(i))) {
                where.append(where.isEmpty() ? "" : " AND ").append(cell.columns().get(i))
                        .append(" IS NOT DISTINCT FROM ?");
                bound.add(row.get(i));
            }
        }
        try (PreparedStatement update = connection.prepareStatement("UPDATE " + cell.table() + " SET "
                + cell.columns().get(cell.index()) + " = ? WHERE " + where)) {
            for (int i = 0; i < bound.size(); i++) {
                update.setObject(i + 1, bound.get(i));
            }
            return update.executeUpdate() == 1;
        } catch (SQLException refused) {
            return false;
        }
    }

    private static Set<String> keys(Connection connection, String table) throws SQLException {
        DatabaseMetaData metadata = connection.getMetaData();
        Set<String> keys = new HashSet<>();
        try (ResultSet columns = metadata.getPrimaryKeys(null, connection.getSchema(), table)) {
            while (columns.next()) {
                keys.add(columns.getString("COLUMN_NAME"));
            }
        }
        return keys;
    }
}
