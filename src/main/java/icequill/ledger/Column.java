package icequill.ledger;

import java.time.LocalDate;
import java.util.Optional;
import org.jdbi.v3.core.result.RowView;

/** Reads columns that may be empty. */
final class Column {

    private Column() {
    }

    static String text(RowView row, String name) {
        return row.getColumn(name, String.class);
    }

    static Optional<String> mayBe(RowView row, String name) {
        return Optional.ofNullable(row.getColumn(name, String.class));
    }

    static Optional<LocalDate> day(RowView row, String name) {
        return mayBe(row, name).map(LocalDate::parse);
    }
}
