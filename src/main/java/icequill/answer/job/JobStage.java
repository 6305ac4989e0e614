package icequill.answer.job;

import icequill.explain.ConstantKey;
import icequill.money.Amounts;
import icequill.tax.Stage;
import java.math.BigDecimal;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A part of a job that is asked for by itself.
 *
 * @param part from 1
 * @param share of the price, in percent
 * @param due with tax, less what is held back; by the quote, or by its invoice
 * @param invoice by number; the last one, where that was given back too
 * @param ready whether it can be invoiced now
 */
public record JobStage(int part, Stage.Kind kind, BigDecimal share, MonetaryAmount due, State state,
        Optional<String> invoice, boolean ready) {

    /** What became of it. */
    public enum State {
        /** Nobody was asked for it. */
        OPEN, INVOICED, PAID,
        /** Taken off by the invoice of the work. */
        USED_UP,
        /** Invoiced of a job that will not be done. */
        DUE_BACK,
        /** By a credit note. */
        REFUNDED
    }

    /** Whether the work waits for it: a deposit that did not come in. */
    public boolean isMissing() {
        return kind == Stage.Kind.DEPOSIT && (state == State.OPEN || state == State.INVOICED);
    }

    /** In one line, for a table of text. */
    String text() {
        return ConstantKey.of(kind) + " " + Amounts.plain(due) + ", " + ConstantKey.words(state.name())
                + invoice.map(number -> ": " + number).orElse("");
    }
}
