package icequill.ledger.store;

import java.time.DateTimeException;
import java.util.function.Supplier;

/** A row of the book holds what the program never writes. */
public final class DamagedRow extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public DamagedRow(String message) {
        super(message);
    }

    /** What is made of a text, which may say nothing. */
    public static <T> T made(String column, Supplier<T> value) {
        try {
            return value.get();
        } catch (DateTimeException | IllegalArgumentException none) {
            throw new DamagedRow(column + ": " + none.getMessage());
        }
    }

    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }
}
