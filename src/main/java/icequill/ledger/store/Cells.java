package icequill.ledger.store;

import org.jspecify.annotations.Nullable;

/** The cells of a row, by the names of their columns. */
@FunctionalInterface
public interface Cells {

    /** What stands there, as text; null where a cell is empty, or there is no such column in a row that is kept by its names. */
    @Nullable
    String text(String column);
}
