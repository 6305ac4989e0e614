package icequill.ledger.papers;

import icequill.problem.Validated;

/** Prints a paper under the number that it is given. Safe for use by many threads, and without looking at the book. */
@FunctionalInterface
public interface Printing {

    Validated<PrintedPaper> under(Numbered numbered);

    /**
     * What {@link #under} gives for a number, where it is known what it gave for the same number after another seal.
     *
     * @param other what it was printed under
     */
    default Validated<PrintedPaper> again(PrintedPaper printed, Numbered other, Numbered numbered) {
        return other.equals(numbered) ? Validated.valid(printed) : under(numbered);
    }
}
