package icequill.answer.shown;

import icequill.explain.ConstantKey;
import icequill.life.quote.AcceptanceWay;
import icequill.life.quote.QuoteEvent.Acceptance;
import icequill.life.quote.QuoteEvent.Refusal;
import icequill.life.quote.QuoteState;
import icequill.life.quote.QuoteState.Accepted;
import icequill.life.quote.QuoteState.Declined;
import icequill.life.quote.QuoteState.Issued;
import icequill.life.quote.RefusalReason;
import icequill.shop.life.QuoteLife;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a quote stands.
 *
 * @param validUntil the last day on which its prices hold; whether that has gone by depends on the day of the reader
 * @param made the agreement that it became, by number; missing as long as it became none
 */
public record QuoteStanding(String number, State state, LocalDate validUntil, Optional<Yes> accepted,
        Optional<No> declined, Optional<String> made) {

    /** One of its states. */
    public enum State {
        ISSUED, ACCEPTED, DECLINED;

        /** By what the customer said. */
        public static State of(Optional<QuoteLife.Answer> answer) {
            return answer.map(said -> switch (said) {
            case ACCEPTED -> ACCEPTED;
            case DECLINED -> DECLINED;
            }).orElse(ISSUED);
        }
    }

    /**
     * How it was accepted.
     *
     * @param plan by id; missing where there was nothing to choose
     * @param name missing where the customer was forgotten since
     * @param honored whether it was after its last day
     */
    public record Yes(LocalDate day, Optional<String> plan, Optional<String> name, Optional<String> title,
            Optional<String> authority, Optional<String> purchaseOrder, AcceptanceWay way, boolean honored) {

        private static Yes of(Acceptance yes) {
            return new Yes(yes.day(), yes.plan(), yes.name(), yes.title(), yes.authority(), yes.purchaseOrder(),
                    yes.way(), yes.isHonored());
        }
    }

    /** Why it was declined. */
    public record No(LocalDate day, RefusalReason reason, Optional<String> words) {

        private static No of(Refusal no) {
            return new No(no.day(), no.reason(), no.words());
        }
    }

    public static QuoteStanding of(QuoteLife life) {
        QuoteState state = life.state();
        return new QuoteStanding(life.issued().number(), switch (state) {
        case Issued issued -> State.ISSUED;
        case Accepted accepted -> State.ACCEPTED;
        case Declined declined -> State.DECLINED;
        }, state.terms().validUntil(),
                state instanceof Accepted(var terms, Acceptance yes) ? Optional.of(Yes.of(yes)) : Optional.empty(),
                state instanceof Declined(var terms, Refusal no) ? Optional.of(No.of(no)) : Optional.empty(),
                life.made());
    }

    /** Names and values, for a table of text. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("state", ConstantKey.of(state)));
        accepted.ifPresent(yes -> {
            rows.add(List.of("accepted", yes.day() + ", " + ConstantKey.words(yes.way().name())
                    + (yes.honored() ? ", after its last day" : "")));
            yes.plan().ifPresent(plan -> rows.add(List.of("plan", plan)));
            yes.name().ifPresent(name -> rows.add(List.of("acceptedBy", name
                    + yes.title().map(title -> ", " + title).orElse("")
                    + yes.authority().map(right -> ", " + right).orElse(""))));
            yes.purchaseOrder().ifPresent(order -> rows.add(List.of("purchaseOrder", order)));
        });
        made.ifPresent(number -> rows.add(List.of("became", number)));
        declined.ifPresent(no -> rows.add(List.of("declined", no.day() + ", " + ConstantKey.words(no.reason().name())
                + no.words().map(words -> ": " + words).orElse(""))));
        return rows;
    }
}
