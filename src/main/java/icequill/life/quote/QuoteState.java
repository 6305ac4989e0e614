package icequill.life.quote;

import icequill.life.quote.QuoteEvent.Acceptance;
import icequill.life.quote.QuoteEvent.Refusal;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.time.LocalDate;

/** Where a quote stands. */
public sealed interface QuoteState {

    QuoteTerms terms();

    /** Nobody answered yet. */
    record Issued(QuoteTerms terms) implements QuoteState {}

    /** The customer took it; this is its end. */
    record Accepted(QuoteTerms terms, Acceptance acceptance) implements QuoteState {}

    /** The customer did not want it; he may think better of it. */
    record Declined(QuoteTerms terms, Refusal refusal) implements QuoteState {}

    /** Where it stands after something happened, or why that cannot be. */
    static Validated<QuoteState> step(QuoteState state, QuoteEvent event) {
        return switch (state) {
        case Issued issued -> switch (event) {
        case Acceptance yes -> accepted(issued.terms(), yes);
        case Refusal no -> declined(issued.terms(), no);
        };
        case Declined(QuoteTerms terms, Refusal before) -> switch (event) {
        case Acceptance yes -> notBefore(before.day(), yes.day(), "was declined").then(later -> accepted(terms, yes));
        case Refusal no -> refused("the quote was declined on " + before.day() + " already", "");
        };
        case Accepted(QuoteTerms terms, Acceptance before) -> switch (event) {
        case Acceptance yes -> refused("the quote was accepted on " + before.day() + " already", "");
        case Refusal no -> refused("the quote was accepted on " + before.day(),
                "what came of it is ended by itself");
        };
        };
    }

    private static Validated<QuoteState> accepted(QuoteTerms terms, Acceptance yes) {
        Problems problems = new Problems();
        problems.take(notBefore(terms.issued(), yes.day(), "was issued"));
        if (terms.isLapsed(yes.day()) && !yes.isHonored()) {
            problems.add(Code.OUT_OF_RANGE, at("day"), "the prices held until " + terms.validUntil(),
                    "a day up to that, another quote, or the shop's word that it holds them");
        }
        plan(terms, yes, problems);
        return problems.or(() -> new Accepted(terms, yes));
    }

    private static void plan(QuoteTerms terms, Acceptance yes, Problems problems) {
        if (terms.plans().isEmpty()) {
            yes.plan().ifPresent(plan -> problems.add(Code.NOT_ALLOWED, at("plan"),
                    "a plan is chosen, but the quote offers none", "no plan"));
        } else if (yes.plan().isEmpty()) {
            problems.add(Code.MISSING, at("plan"), "nothing says which plan is chosen",
                    Problem.oneOf("", terms.plans()));
        } else {
            yes.plan().filter(plan -> !terms.plans().contains(plan)).ifPresent(
                    plan -> problems.add(Problem.unknownName(at("plan"), "plan of this quote", plan, terms.plans())));
        }
    }

    private static Validated<QuoteState> declined(QuoteTerms terms, Refusal no) {
        return notBefore(terms.issued(), no.day(), "was issued").map(later -> new Declined(terms, no));
    }

    private static Validated<LocalDate> notBefore(LocalDate before, LocalDate day, String happened) {
        return day.isBefore(before)
                ? Validated.invalid(new Problem(Code.WRONG_ORDER, at("day"),
                        day + " is before " + before + ", on which the quote " + happened, "that day or a later one"))
                : Validated.valid(day);
    }

    private static Validated<QuoteState> refused(String message, String allowed) {
        return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, message, allowed));
    }

    private static Place at(String field) {
        return new Place("", 0, field);
    }
}
