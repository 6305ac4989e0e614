package icequill.ledger;

import icequill.problem.Checked;
import java.time.LocalDate;
import java.util.Optional;

/** Reads the data of a paper, which the book itself keeps as it was given. */
@FunctionalInterface
public interface PaperReader {

    /**
     * What the data says of a paper.
     *
     * @param number empty where a paper of its kind does not say it
     * @param sums of a paper with prices
     */
    record Read(Optional<String> number, LocalDate date, Optional<Sums> sums) {}

    Checked<Read> read(String json);
}
