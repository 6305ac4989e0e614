package icequill.agreement;

import icequill.money.Percent;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Percent off the planned visits by how much an agreement looks after, each in place of the tier's own discount and never
 * besides it.
 *
 * @param rows at least one, in no order
 */
public record QuantityDiscounts(List<Row> rows) {

    /** What is counted. */
    public enum Counted {
        MACHINES, SITES
    }

    /**
     * A step of the table.
     *
     * @param from so many, from 2
     * @param percent off, from so many on
     */
    public record Row(Counted counted, int from, Percent percent) {
        boolean holdsFor(Reach reach) {
            return from <= count(reach);
        }

        /** How many of what it counts there are. */
        public int count(Reach reach) {
            return switch (counted) {
            case MACHINES -> reach.machines();
            case SITES -> reach.sites();
            };
        }
    }

    public QuantityDiscounts {
        rows = List.copyOf(rows);
    }

    /** The best that can be had; empty where there is too little for any. */
    public Optional<Row> best(Reach reach) {
        return rows.stream().filter(row -> row.holdsFor(reach))
                .max(Comparator.comparing((Row row) -> row.percent().value())
                        .thenComparing(Row::counted, Comparator.reverseOrder()));
    }
}
