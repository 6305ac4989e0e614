package icequill.life.agreement;

import icequill.life.agreement.AgreementEvent.Notice;
import icequill.life.agreement.AgreementEvent.Refusal;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.time.LocalDate;
import java.util.Optional;

/** Where an agreement stands that was accepted. */
public sealed interface AgreementState {

    /** Nothing ends it but its term. */
    record InForce() implements AgreementState {}

    /** Somebody gave notice; it runs to the day that this names. */
    record Noticed(Notice notice) implements AgreementState {}

    /** It runs to the end of its term and does not go on. */
    record Refused(Refusal refusal) implements AgreementState {}

    /** Where it stands on a day. */
    default AgreementStage on(LocalDate day, AgreementTerms terms) {
        if (day.isBefore(terms.start())) {
            return AgreementStage.TO_COME;
        }
        boolean isOver = lastDay(terms).filter(day::isAfter).isPresent();
        return switch (this) {
        case InForce running -> isOver ? AgreementStage.ENDED_BY_TERM : AgreementStage.IN_FORCE;
        case Noticed noticed -> isOver ? AgreementStage.ENDED_BY_NOTICE : AgreementStage.NOTICE_GIVEN;
        case Refused refused -> isOver ? AgreementStage.ENDED_BY_REFUSAL : AgreementStage.NOTICE_GIVEN;
        };
    }

    /** Its last day as far as that is known; empty where it goes on by the month. */
    default Optional<LocalDate> lastDay(AgreementTerms terms) {
        return switch (this) {
        case InForce running -> terms.termEnd();
        case Noticed(Notice notice) -> Optional.of(notice.lastDay());
        case Refused refused -> Optional.of(terms.renewal().term().lastDay());
        };
    }

    /** Where it stands after something happened, or why that cannot be. */
    static Validated<AgreementState> step(AgreementState state, AgreementEvent event, AgreementTerms terms) {
        Problems problems = new Problems();
        problems.addAll(order(state, event).problems());
        if (problems.isEmpty()) {
            switch (event) {
            case Notice notice -> check(notice, terms, problems);
            case Refusal refusal -> check(refusal, terms, problems);
            }
        }
        return problems.or(() -> after(event));
    }

    /** Where it stands after something that the book knows happened: its terms may have been mended since. */
    static Validated<AgreementState> told(AgreementState state, AgreementEvent event) {
        return order(state, event).map(same -> after(event));
    }

    private static AgreementState after(AgreementEvent event) {
        return switch (event) {
        case Notice notice -> new Noticed(notice);
        case Refusal refusal -> new Refused(refusal);
        };
    }

    private static Validated<AgreementState> order(AgreementState state, AgreementEvent event) {
        return switch (state) {
        case InForce running -> Validated.valid(running);
        case Noticed(Notice before) ->
            refused("notice was given on " + before.day() + " already: the agreement ends on "
                    + before.lastDay());
        case Refused(Refusal before) -> switch (event) {
        case Notice notice -> Validated.valid(state);
        case Refusal again -> refused("that it goes on was refused on " + before.day() + " already");
        };
        };
    }

    private static Validated<AgreementState> refused(String message) {
        return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, message, ""));
    }

    private static void check(Notice notice, AgreementTerms terms, Problems problems) {
        LocalDate earliest = terms.earliestEnd(notice.day());
        LocalDate last = notice.lastDay();
        if (terms.termEnd().filter(last::isAfter).isPresent()) {
            problems.add(Code.OUT_OF_RANGE, at("lastDay"),
                    "it would end on " + last + ", but its term does on " + terms.termEnd().orElseThrow(),
                    "that it is not to go on after its term: a refusal");
        } else if (last.isBefore(earliest)) {
            problems.add(Code.OUT_OF_RANGE, at("lastDay"),
                    last + " is too early for a notice of " + notice.day(), earliest + " or a later day");
        } else if (last.isBefore(terms.start())) {
            problems.add(Code.OUT_OF_RANGE, at("lastDay"), "it begins on " + terms.start(), "that day or a later one");
        } else if (!terms.isMonthsEnd(last)) {
            problems.add(Code.OUT_OF_RANGE, at("lastDay"), "after its term it ends with one of its months",
                    "the end of one: " + terms.earliestEnd(notice.day()) + ", or of a later one");
        }
    }

    private static void check(Refusal refusal, AgreementTerms terms, Problems problems) {
        LocalDate latest = terms.renewal().lastDayToRefuse();
        if (refusal.day().isAfter(latest)) {
            problems.add(Code.OUT_OF_RANGE, at("day"), "the last day to refuse was " + latest,
                    "a day up to that; after it, the notice that ends what it goes on by");
        }
    }

    private static Place at(String field) {
        return new Place("", 0, field);
    }
}
