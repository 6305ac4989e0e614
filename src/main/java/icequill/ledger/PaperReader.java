package icequill.ledger;

import icequill.problem.Checked;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** Reads the data of a paper, which the book itself keeps as it was given. */
@FunctionalInterface
public interface PaperReader {

    /**
     * What the data says of a paper.
     *
     * @param number empty where a paper of its kind does not say it
     * @param sums of a paper with prices
     * @param taxes what each authority gets by it, or gives back
     */
    record Read(Optional<String> number, LocalDate date, Optional<Sums> sums, List<Levied> taxes) {
        public Read {
            taxes = List.copyOf(taxes);
        }
    }

    /** The tax of one authority at one rate, named so that it is told from every other. */
    record Levied(String authority, MonetaryAmount amount) {}

    Checked<Read> read(String json);
}
