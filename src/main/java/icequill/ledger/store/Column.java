package icequill.ledger.store;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import org.jdbi.v3.core.result.RowView;

/** Reads columns. What no program wrote there is a {@link DamagedRow}. */
public final class Column {

    private Column() {
    }

    public static String text(RowView row, String name) {
        return mayBe(row, name).orElseThrow(() -> new DamagedRow(name + " is empty"));
    }

    public static Optional<String> mayBe(RowView row, String name) {
        return Optional.ofNullable(row.getColumn(name, String.class));
    }

    public static Optional<LocalDate> day(RowView row, String name) {
        return mayBe(row, name).map(text -> day(name, text));
    }

    public static LocalDate day(String name, String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException none) {
            throw new DamagedRow(name + " is \"" + text + "\", which is no day");
        }
    }

    public static Instant moment(RowView row, String name) {
        return moment(name, text(row, name));
    }

    public static Instant moment(String name, String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeException none) {
            throw new DamagedRow(name + " is \"" + text + "\", which is no moment");
        }
    }

    /** What is made of several columns, which together may say nothing either. */
    public static <T> T made(String what, Supplier<T> value) {
        try {
            return value.get();
        } catch (DateTimeException | IllegalArgumentException none) {
            throw new DamagedRow(what + ": " + none.getMessage());
        }
    }

    public static int whole(RowView row, String name) {
        return whole(name, text(row, name));
    }

    public static int whole(String name, String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException none) {
            throw new DamagedRow(name + " is \"" + text + "\", which is no number of that size");
        }
    }

    public static long units(RowView row, String name) {
        String text = text(row, name);
        try {
            return Long.parseLong(text);
        } catch (NumberFormatException none) {
            throw new DamagedRow(name + " is \"" + text + "\", which is no number of that size");
        }
    }
}
