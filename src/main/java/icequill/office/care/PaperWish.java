package icequill.office.care;

import java.util.List;
import java.util.Optional;

/**
 * Which papers somebody looks for; whatever is empty leaves none out.
 *
 * @param text words, all of which a paper has to have
 * @param kinds such as {@code credit-note}, or {@code quote} for both kinds of quotes
 * @param state of an invoice: {@code open}, {@code part-paid}, {@code paid} or {@code credited}
 * @param caller a part of the name of who asked for the visit that a paper is for
 * @param store the customer's number for the site
 * @param most how many at most, from 1
 */
public record PaperWish(String text, AskedPeriod period, List<String> kinds, Optional<String> state,
        Optional<String> caller, Optional<String> store, int most) {

    public PaperWish {
        kinds = List.copyOf(kinds);
    }

    /** Whether nothing is asked for. */
    public boolean isEmpty() {
        return text.isBlank() && kinds.isEmpty() && state.isEmpty() && caller.isEmpty() && store.isEmpty()
                && period.isEmpty();
    }

    /** The same of some kinds. */
    public PaperWish of(List<String> some) {
        return new PaperWish(text, period, some, state, caller, store, most);
    }
}
