package icequill.answer.quote;

import icequill.agreement.CleaningInterval;
import icequill.answer.PlanEarnings;
import icequill.answer.amounts.MaintenanceAmounts;
import icequill.answer.forecast.PrintedWay;
import icequill.answer.quote.QuoteFigures.BreakEven;
import icequill.answer.quote.QuoteFigures.PlayedBack;
import icequill.answer.quote.QuoteFigures.Recommended;
import icequill.answer.shown.QuoteChoices;
import icequill.document.ComparisonSheet;
import icequill.document.MaintenanceQuote;
import icequill.document.Outlook;
import icequill.explain.Phrase;
import icequill.files.answer.Sheet;
import icequill.forecast.inputs.FoulingEstimate;
import icequill.outlook.EstimateEcho;
import icequill.outlook.SiteForecast;
import icequill.plans.PlanContext;
import icequill.problem.Problem;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A maintenance quote that was worked out and is not issued.
 *
 * @param quote in the language of the reader
 * @param comparison the same; empty where only prices were asked for
 * @param forecast empty too where the shop has nothing to forecast by
 * @param notices plans that could not be priced, and why nothing is compared where it cannot be
 * @param isForOwner whether what the shop earns is told
 */
public record QuoteSheet(PlanContext hand, MaintenanceQuote quote, Optional<ComparisonSheet> comparison,
        Optional<SiteForecast> forecast, List<Problem> notices, boolean isForOwner) implements Sheet {

    public QuoteSheet {
        notices = List.copyOf(notices);
    }

    private Sentences sentences() {
        return Sentences.of(quote.language(), quote.shop().address().country());
    }

    /** The ways of care, as a table of text. */
    public QuoteChoices choices() {
        return QuoteChoices.of(quote).orElseThrow();
    }

    /** What the shop earns, where it is told. */
    public Optional<PlanEarnings> earnings() {
        return isForOwner ? Optional.of(new PlanEarnings(hand, quote.language())) : Optional.empty();
    }

    /** How often to clean and why, and what to expect, in sentences. */
    public List<String> lines() {
        QuoteFigures figures = data();
        List<String> lines = new ArrayList<>();
        lines.add(sentences().word("page.site.interval", String.valueOf(figures.recommended().months())));
        lines.addAll(figures.recommended().reasons());
        lines.addAll(figures.advice());
        figures.estimates().forEach(estimate -> lines.add(estimate.said() + " (" + estimate.origin() + ")"));
        return lines;
    }

    @Override
    public QuoteFigures data() {
        Sentences sentences = sentences();
        CleaningInterval interval = quote.interval();
        return new QuoteFigures(hand.setting().site().id(), hand.setting().site().name(), quote.date(),
                quote.validUntil(),
                new Recommended(interval.months(),
                        interval.reasons().stream().map(reason -> say(sentences, reason)).toList()),
                MaintenanceAmounts.of(quote, sentences), comparison.map(ComparisonSheet::callPrice),
                comparison.flatMap(ComparisonSheet::lastYear),
                comparison.map(ComparisonSheet::plans).orElse(List.of()).stream()
                        .map(plan -> new BreakEven(sentences.in(plan.name()), plan.price(), plan.breakEven()))
                        .toList(),
                outlook().map(Outlook::answer).orElse(List.of()).stream().map(said -> say(sentences, said)).toList(),
                outlook().map(ahead -> ahead.ways().stream().map(PrintedWay::of).toList()),
                playedBack(sentences), earnings().map(PlanEarnings::data), notices);
    }

    private Optional<Outlook> outlook() {
        return comparison.flatMap(ComparisonSheet::outlook);
    }

    private List<PlayedBack> playedBack(Sentences sentences) {
        return forecast.map(EstimateEcho::new).map(EstimateEcho::sides).orElse(List.of()).stream()
                .map(side -> new PlayedBack(side.cause(), FoulingEstimate.Stops.OF, side.bySix(), side.byTwelve(),
                        side.cared(), say(sentences, side.said().what()), sentences.say(side.said().origin())))
                .toList();
    }

    private static String say(Sentences sentences, Phrase phrase) {
        return Sentences.capitalized(sentences.say(phrase));
    }
}
