package icequill.life.quote;

import java.time.LocalDate;
import java.util.List;

/**
 * What a quote holds out to the customer.
 *
 * @param issued its date
 * @param validUntil the last day on which its prices hold
 * @param plans that can be chosen, by id; none where there is nothing to choose
 */
public record QuoteTerms(LocalDate issued, LocalDate validUntil, List<String> plans) {

    public QuoteTerms {
        plans = List.copyOf(plans);
    }

    /** Whether its last day has gone by. */
    public boolean isLapsed(LocalDate day) {
        return day.isAfter(validUntil);
    }
}
