package icequill.life.agreement;

import icequill.agreement.SentNotice;
import java.time.LocalDate;
import java.util.List;
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
     * The customer was told that it will go on.
     *
     * @param notice that went to him, of which it is not known yet whether it arrived
     */
    record Told(SentNotice notice) implements AgreementEvent {
        @Override
        public LocalDate day() {
            return notice.sent();
        }
    }

    /** The last notice that was sent is known to have arrived. */
    record Arrived(LocalDate day) implements AgreementEvent {}

    /**
     * A notice that was sent is known to have come back.
     *
     * @param tracking by which it was sent
     */
    record CameBack(LocalDate day, String tracking) implements AgreementEvent {}

    /**
     * It goes on as another agreement, from the day after its term, or from its next season.
     *
     * @param next the number of that
     * @param who agreed to it; empty where it goes on by itself, or the customer was forgotten since
     */
    record Renewal(LocalDate day, String next, Optional<String> who) implements AgreementEvent {}

    /**
     * It is what another agreement went on as.
     *
     * @param before the number of that
     */
    record Begun(LocalDate day, String before) implements AgreementEvent {}

    /**
     * Its owner sold what it is for, and a new one takes over the rest of its term.
     *
     * @param day on which that was said
     * @param from the first day of the new owner
     * @param next the number of his agreement
     * @param who agreed to it; empty where nobody is named, or the customer was forgotten since
     */
    record Transfer(LocalDate day, LocalDate from, String next, Optional<String> who, Optional<String> words)
            implements
            AgreementEvent {}

    /**
     * It is the rest of another agreement, which a new owner took over.
     *
     * @param day his first one
     * @param before the number of that
     */
    record TakenOver(LocalDate day, String before) implements AgreementEvent {}

    /**
     * The customer does not want it to go on after its term.
     *
     * @param day on which he said so
     */
    record Refusal(LocalDate day, NoticeWay way, Optional<String> who, Optional<String> words)
            implements
            AgreementEvent {}

    /**
     * Machines come in, or go out, in mid-term.
     *
     * @param day on which it was agreed on
     * @param from the first day with the machines as they are then
     * @param site at which they stand, by id
     * @param added by id, and not looked after before
     * @param removed by id
     * @param who agreed to it; empty where nobody is named, or the customer was forgotten since
     * @param words of why
     */
    record Changed(LocalDate day, LocalDate from, String site, List<String> added, List<String> removed,
            Optional<String> who, Optional<String> words) implements AgreementEvent {
        public Changed {
            added = List.copyOf(added);
            removed = List.copyOf(removed);
        }
    }

    /**
     * A whole site comes in, in mid-term.
     *
     * @param day on which it was agreed on
     * @param from its first day
     * @param site by id
     * @param machines that are looked after there, by id; empty for all
     * @param who agreed to it; empty where nobody is named, or the customer was forgotten since
     * @param words of why
     */
    record SiteIn(LocalDate day, LocalDate from, String site, List<String> machines, Optional<String> who,
            Optional<String> words) implements AgreementEvent {
        public SiteIn {
            machines = List.copyOf(machines);
        }
    }

    /**
     * A whole site goes out, in mid-term.
     *
     * @param day on which it was agreed on
     * @param from the first day without it
     * @param site by id
     * @param who agreed to it; empty where nobody is named, or the customer was forgotten since
     * @param words of why
     */
    record SiteOut(LocalDate day, LocalDate from, String site, Optional<String> who, Optional<String> words)
            implements
            AgreementEvent {}

    /**
     * A purchase order stands for whatever it bills from a day on; papers from before keep theirs.
     *
     * @param day on which that was said
     * @param number empty where none stands any more
     * @param who said so; empty where nobody is named, or the customer was forgotten since
     */
    record Ordered(LocalDate day, LocalDate from, Optional<String> number, Optional<String> who)
            implements
            AgreementEvent {}
}
