package icequill.render.view;

import icequill.document.CatchUpPrice;
import icequill.document.MaintenanceQuote;
import icequill.document.PlanChoice;
import icequill.explain.ConstantKey;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Wording;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** The choices of a maintenance quote as rows of a table, the recommended one first, and as boxes to tick. */
record ChoicesView(MaintenanceQuote quote, Sentences sentences) {

    /**
     * One choice.
     *
     * @param net a year's price
     * @param first the first year's
     */
    record Row(String name, String visits, String net, String first, String tax, String gross, String why)
            implements
            Texts {}

    List<Row> rows() {
        return ordered().map(this::row).toList();
    }

    /** Only what is ordered for a year. */
    List<String> ticks() {
        return ordered().filter(choice -> choice.kind() == PlanChoice.Kind.AGREEMENT)
                .map(choice -> sentences.word(span().key("plan.tick"), name(choice), amount(choice.net()),
                        payments(choice)))
                .toList();
    }

    /** The recommended plan, the others, and what is no plan. */
    private Stream<PlanChoice> ordered() {
        List<PlanChoice> agreements = quote.choices().stream()
                .filter(choice -> choice.kind() == PlanChoice.Kind.AGREEMENT).toList();
        List<PlanChoice> others = new ArrayList<>(quote.choices());
        others.removeAll(agreements);
        return Stream.of(agreements.stream().filter(quote::isRecommended),
                agreements.stream().filter(choice -> !quote.isRecommended(choice)), others.reversed().stream())
                .flatMap(choices -> choices);
    }

    private Row row(PlanChoice choice) {
        MonetaryAmount tax = choice.tax().add(catchUp(choice, CatchUpPrice::tax));
        MonetaryAmount first = choice.net().add(catchUp(choice, CatchUpPrice::extra));
        String why = Stream.concat(choice.reasons().stream().map(sentences::say).map(Sentences::capitalized),
                choice.payments().isEmpty() ? Stream.of() : Stream.of(sentences.word("choice.paid", payments(choice))))
                .collect(Collectors.joining(" "));
        return new Row(name(choice), visits(choice), planned(choice, choice.net()), planned(choice, first),
                planned(choice, tax), planned(choice, first.add(tax)), why);
    }

    private MonetaryAmount catchUp(PlanChoice choice, Function<CatchUpPrice, MonetaryAmount> part) {
        return quote.catchUp().filter(price -> choice.visits() > 0).map(part).orElse(choice.net().multiply(0));
    }

    private String visits(PlanChoice choice) {
        if (choice.visits() == 0) {
            return sentences.word("choice.no-visits");
        }
        return choice.visits() == choice.fullCleans()
                ? sentences.say(Phrase.of(span().key("choice.all-full"), Fact.number(choice.visits(), "full-cleaning")))
                : sentences.say(Phrase.of("choice.visits", Fact.number(choice.visits(), "visit"),
                        Fact.number(choice.fullCleans(), "full-cleaning")));
    }

    private PriceSpan span() {
        return new PriceSpan(quote.term());
    }

    private String name(PlanChoice choice) {
        return Sentences.capitalized(sentences.word("choice.name." + ConstantKey.of(choice.kind()),
                choice.plan().map(this::in).orElse("")));
    }

    private String in(Wording plan) {
        return sentences.in(plan);
    }

    private String planned(PlanChoice choice, MonetaryAmount amount) {
        return choice.visits() == 0 ? sentences.word("choice.by-call") : amount(amount);
    }

    private String payments(PlanChoice choice) {
        return choice.payments().isEmpty()
                ? sentences.word("choice.by-visit")
                : PriceSpan.counted(choice.payments().stream().map(payment -> amount(payment.amount())).toList());
    }

    private String amount(MonetaryAmount amount) {
        return sentences.formats().amount(amount);
    }
}
