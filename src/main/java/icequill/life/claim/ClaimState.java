package icequill.life.claim;

import icequill.life.claim.ClaimEvent.Denial;
import icequill.life.claim.ClaimEvent.Dispatch;
import icequill.life.claim.ClaimEvent.PartReturn;
import icequill.life.claim.ClaimEvent.Settlement;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** Where a claim stands. */
public sealed interface ClaimState {

    ClaimTerms terms();

    /** The day of the last step that led to the state. */
    LocalDate since();

    /** The day on which the failed part went back; empty before. */
    Optional<LocalDate> returned();

    /** The payer was not asked yet. */
    record Noted(ClaimTerms terms, LocalDate since, Optional<LocalDate> returned) implements ClaimState {}

    /** The payer was asked. */
    record Sent(ClaimTerms terms, LocalDate since, Optional<String> reference,
            Optional<LocalDate> returned) implements ClaimState {}

    /** So much came in; this is its end. */
    record Paid(ClaimTerms terms, LocalDate since, MonetaryAmount amount,
            Optional<LocalDate> returned) implements ClaimState {}

    /** Nothing comes in; what the customer may be charged then is for a person to decide. */
    record Refused(ClaimTerms terms, LocalDate since, String reason,
            Optional<LocalDate> returned) implements ClaimState {}

    /** Where it stands after something happened, or why that cannot be. */
    static Validated<ClaimState> step(ClaimState state, ClaimEvent event) {
        if (event.day().isBefore(state.since())) {
            return Validated.invalid(new Problem(Code.WRONG_ORDER, new Place("", 0, "day"),
                    event.day() + " is before " + state.since() + ", the day of the step before it",
                    "that day or a later one"));
        }
        return switch (event) {
        case PartReturn(LocalDate day) -> returned(state, day);
        case Dispatch(LocalDate day, Optional<String> reference) -> state instanceof Noted noted
                ? Validated.valid(new Sent(noted.terms(), day, reference, noted.returned()))
                : refused(state);
        case Settlement(LocalDate day, MonetaryAmount amount) -> state instanceof Sent sent
                ? Validated.valid(new Paid(sent.terms(), day, amount, sent.returned()))
                : refused(state);
        case Denial(LocalDate day, String reason) -> state instanceof Sent sent
                ? Validated.valid(new Refused(sent.terms(), day, reason, sent.returned()))
                : refused(state);
        };
    }

    private static Validated<ClaimState> returned(ClaimState state, LocalDate day) {
        if (state.returned().isPresent()) {
            return no("the failed part went back on " + state.returned().get() + " already", "");
        }
        Optional<LocalDate> back = Optional.of(day);
        return Validated.valid(switch (state) {
        case Noted(ClaimTerms terms, LocalDate since, Optional<LocalDate> none) -> new Noted(terms, since, back);
        case Sent(ClaimTerms terms, LocalDate since, Optional<String> reference, Optional<LocalDate> none) ->
            new Sent(terms, since, reference, back);
        case Paid(ClaimTerms terms, LocalDate since, MonetaryAmount amount, Optional<LocalDate> none) ->
            new Paid(terms, since, amount, back);
        case Refused(ClaimTerms terms, LocalDate since, String reason, Optional<LocalDate> none) ->
            new Refused(terms, since, reason, back);
        });
    }

    private static Validated<ClaimState> refused(ClaimState state) {
        return switch (state) {
        case Noted noted -> no("the claim was not sent yet", "first that it was sent");
        case Sent sent -> no("the claim was sent on " + sent.since() + " already", "that it was paid or refused");
        case Paid paid -> no("the claim was paid on " + paid.since(), "");
        case Refused over -> no("the claim was refused on " + over.since(), "another claim, where there is one");
        };
    }

    private static Validated<ClaimState> no(String message, String allowed) {
        return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, message, allowed));
    }
}
