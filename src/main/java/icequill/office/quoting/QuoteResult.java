package icequill.office.quoting;

import icequill.answer.quote.QuoteOutcomes.Outcome;
import icequill.answer.quote.QuoteOutcomes.Row;
import icequill.document.MaintenanceQuote;
import icequill.document.Paper;
import icequill.document.PlanChoice;
import icequill.document.PlanYear;
import icequill.document.RepairQuote;
import icequill.explain.ConstantKey;
import icequill.life.quote.QuoteEvent.Acceptance;
import icequill.life.quote.QuoteEvent.Refusal;
import icequill.life.quote.QuoteState;
import icequill.life.quote.QuoteState.Accepted;
import icequill.life.quote.QuoteState.Declined;
import icequill.life.quote.QuoteState.Issued;
import icequill.life.quote.QuoteTerms;
import icequill.shop.life.QuoteLife;
import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** What became of one quote. */
final class QuoteResult {

    private QuoteResult() {
    }

    static Row of(QuoteLife life, LocalDate day) {
        QuoteState state = life.state();
        return new Row(life.issued().number(), life.issued().series().kind(), life.issued().date(),
                outcome(state, day),
                state instanceof Declined(QuoteTerms terms, Refusal no)
                        ? Optional.of(ConstantKey.of(no.reason()))
                        : Optional.empty(),
                net(life.paper(), state));
    }

    private static Outcome outcome(QuoteState state, LocalDate day) {
        return switch (state) {
        case Accepted won -> Outcome.ACCEPTED;
        case Declined lost -> Outcome.DECLINED;
        case Issued open -> open.terms().isLapsed(day) ? Outcome.LAPSED : Outcome.OPEN;
        };
    }

    private static MonetaryAmount net(Paper paper, QuoteState state) {
        return switch (paper) {
        case RepairQuote repair -> repair.totals().net();
        case MaintenanceQuote plans -> state instanceof Accepted(QuoteTerms terms, Acceptance yes)
                ? plans.plans().stream().filter(year -> yes.plan().filter(year.tier().id()::equals).isPresent())
                        .map(PlanYear::price).findFirst().orElseThrow()
                : plans.choices().stream().filter(plans::isRecommended).map(PlanChoice::net).findFirst()
                        .orElseGet(() -> plans.plans().getFirst().price());
        default -> throw new IllegalStateException("no quote");
        };
    }
}
