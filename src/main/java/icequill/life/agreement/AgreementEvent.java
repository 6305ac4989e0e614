package icequill.life.agreement;

import java.time.LocalDate;
import java.util.Optional;

/** What happens to an agreement that is in force. */
public sealed interface AgreementEvent {

    LocalDate day();

    /**
     * Somebody ends it.
     *
     * @param day on which the notice was received
     * @param lastDay of the agreement
     * @param who gave it; empty where nobody is named, or the customer was forgotten since
     * @param words of it, as the office wrote them
     */
    record Notice(LocalDate day, LocalDate lastDay, NoticeBy by, NoticeWay way, Optional<String> who,
            Optional<String> words) implements AgreementEvent {}

    /**
     * The customer does not want it to go on after its term.
     *
     * @param day on which he said so
     */
    record Refusal(LocalDate day, NoticeWay way, Optional<String> who, Optional<String> words)
            implements
            AgreementEvent {}
}
