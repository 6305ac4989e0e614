package icequill.life.quote;

import java.time.LocalDate;
import java.util.Optional;

/** What happens to a quote once it is issued. */
public sealed interface QuoteEvent {

    LocalDate day();

    /**
     * The customer says yes.
     *
     * @param plan by id; empty where there is nothing to choose
     * @param name of whoever said so; empty only where the customer was forgotten since
     * @param title what he is at the customer's
     * @param authority by what right he says so for the customer, in words
     * @param purchaseOrder under which it is to be billed
     * @param isHonored whether the shop holds its prices though the last day has gone by
     */
    record Acceptance(LocalDate day, Optional<String> plan, Optional<String> name, Optional<String> title,
            Optional<String> authority, Optional<String> purchaseOrder, AcceptanceWay way, boolean isHonored)
            implements
            QuoteEvent {}

    /**
     * The customer says no.
     *
     * @param words what he said, as the office wrote it
     */
    record Refusal(LocalDate day, RefusalReason reason, Optional<String> words) implements QuoteEvent {}
}
