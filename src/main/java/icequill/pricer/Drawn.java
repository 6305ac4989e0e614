package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import java.util.List;
import java.util.Optional;

/**
 * What was sold ahead and pays for a charge.
 *
 * @param value of what it takes
 * @param taxed its sale, where it was not taxed then, so that it is now
 */
record Drawn(List<Phrase> why, Explanation value, Optional<Sale> taxed) {

    /** The text of the line by which a block is sold. */
    static final String SALE = "line.block-sold";
    /** The text of what is taken off because it was paid ahead. */
    static final String PAID = "line.block-paid";
    /** The text of what is taxed now though it was paid ahead. */
    static final String TAXED = "line.block-taxed";

    /** When a block was sold, and on which form. */
    record Sale(Fact sold, Fact form) {}

    Drawn {
        why = List.copyOf(why);
    }
}
