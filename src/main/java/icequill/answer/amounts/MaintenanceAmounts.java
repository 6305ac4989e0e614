package icequill.answer.amounts;

import icequill.document.MaintenanceQuote;
import icequill.document.PlanChoice;
import icequill.document.PlanYear;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Of a maintenance quote.
 *
 * @param choices ways of care by the year
 * @param plans how the price of each plan comes about
 * @param calls what a call costs, by labor band
 * @param catchUp what the first visit costs more where dirt is old
 */
public record MaintenanceAmounts(List<Choice> choices, List<Year> plans, List<CallPrice> calls,
        Optional<FirstVisit> catchUp, Optional<LastYear> lastYear) implements PaperAmounts {

    /**
     * A way of care.
     *
     * @param plan its name; missing for ways without one
     */
    public record Choice(PlanChoice.Kind kind, Optional<String> plan, int visits, MonetaryAmount net,
            MonetaryAmount tax, MonetaryAmount gross, List<DueAmount> installments) {}

    /**
     * A year of a plan.
     *
     * @param discount negative
     * @param reserve for calls that are included
     */
    public record Year(String plan, List<Visits> visits, MonetaryAmount list, MonetaryAmount discount,
            MonetaryAmount reserve, MonetaryAmount price) {}

    /** Visits that are alike; lines and net of one of them. */
    public record Visits(int count, MonetaryAmount net, List<LineAmounts> lines) {}

    /** The work as usual, as it is, the difference, and its tax. */
    public record FirstVisit(MonetaryAmount usual, MonetaryAmount whole, MonetaryAmount extra, MonetaryAmount tax) {}

    /** Calls of the year before, at what a call costs now. */
    public record LastYear(int calls, MonetaryAmount each, MonetaryAmount together) {}

    public MaintenanceAmounts {
        choices = List.copyOf(choices);
        plans = List.copyOf(plans);
        calls = List.copyOf(calls);
    }

    public static MaintenanceAmounts of(MaintenanceQuote quote, Sentences sentences) {
        return new MaintenanceAmounts(quote.choices().stream().map(choice -> choice(choice, sentences)).toList(),
                quote.plans().stream().map(year -> year(year, sentences)).toList(),
                quote.calls().stream().map(call -> CallPrice.of(call, quote.language())).toList(),
                quote.catchUp().map(first -> new FirstVisit(first.usual(), first.whole(), first.extra(), first.tax())),
                quote.lastYear().map(past -> new LastYear(past.calls(), past.each(), past.together())));
    }

    private static Choice choice(PlanChoice choice, Sentences sentences) {
        return new Choice(choice.kind(), choice.plan().map(sentences::in), choice.visits(), choice.net(), choice.tax(),
                choice.gross(), DueAmount.of(choice.payments()));
    }

    private static Year year(PlanYear year, Sentences sentences) {
        return new Year(sentences.in(year.tier().name()), year.visits().stream()
                .map(alike -> new Visits(alike.visits().size(), alike.net(),
                        alike.lines().stream().map(line -> LineAmounts.of(line, amount -> amount, sentences)).toList()))
                .toList(), year.list(), year.discount().negate(), year.reserve(), year.price());
    }
}
