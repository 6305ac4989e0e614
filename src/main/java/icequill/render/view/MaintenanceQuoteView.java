package icequill.render.view;

import icequill.agreement.Tier;
import icequill.document.CatchUpPrice;
import icequill.document.MaintenanceQuote;
import icequill.document.MaintenanceQuote.PastCalls;
import icequill.document.PlanChoice;
import icequill.document.PlanYear;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** A maintenance quote as texts, ready for {@code maintenance-quote.ftlh}. */
public record MaintenanceQuoteView(MaintenanceQuote quote, Sentences sentences) {

    public static Page of(MaintenanceQuote quote) {
        String country = quote.shop().address().country();
        return new MaintenanceQuoteView(quote, Sentences.of(quote.language(), country)).page();
    }

    /**
     * What is offered.
     *
     * @param span what the choices are for
     * @param recommended what we recommend, and why
     * @param ticks choices to tick
     * @param lastYear may be empty
     * @param annex its heading; empty where there is none
     * @param catchUp where machines were surveyed
     * @param plans with their prices, for the annex
     */
    record Offer(String currency, String span, List<String> machines, String recommended, List<String> why,
            List<ChoicesView.Row> choices, List<String> ticks, String lastYear, CallChargesView.Calls calls,
            List<PlannedWorkView.Scope> scopes, List<PlannedWorkView.Days> days, List<String> excluded,
            List<String> terms, String annex, Optional<CatchUpView.CatchUp> catchUp, List<PlanYearView.Year> plans)
            implements
            Texts {}

    private Page page() {
        LetterView.Title title = new LetterView.Title(
                sentences.word(quote.number().isPresent() ? "plan.quote" : "plan.quote-draft"),
                quote.number());
        return Page.of(
                new LetterView(quote, title, sentences).letter(quote.billTo(), quote.number().isEmpty(), facts()),
                offer());
    }

    private Offer offer() {
        List<Tier> tiers = quote.plans().stream().map(PlanYear::tier).toList();
        PlanYearView years = new PlanYearView(sentences, span());
        PlannedWorkView work = new PlannedWorkView(quote.plans(), sentences);
        ChoicesView choices = new ChoicesView(quote, sentences);
        return new Offer(quote.choices().getFirst().net().getCurrency().getCurrencyCode(),
                sentences.word(span().key("plan.choices")),
                quote.machines().stream().map(machine -> new MachineName(machine, sentences).text()).toList(),
                recommended(), why(), choices.rows(), choices.ticks(),
                quote.lastYear().map(this::lastYear).orElse(""),
                new CallChargesView(quote.calls(), sentences).calls(tiers), work.scopes(), work.days(),
                years.sentencesOf(tiers.stream().flatMap(tier -> tier.exclusions().stream()).distinct().toList()),
                terms(), quote.annex() ? sentences.word("plan.annex") : "",
                quote.catchUp().map(price -> new CatchUpView(price, sentences).catchUp()),
                quote.plans().stream().map(years::year).toList());
    }

    private List<Details.Row> facts() {
        return new Details(sentences).add("fact.quote-date", sentences.formats().day(quote.date()))
                .add("fact.valid-until", sentences.formats().day(quote.validUntil()))
                .add("visit.site", quote.where().site()).add("fact.store", quote.where().storeNumber())
                .add("fact.vendor", quote.vendorNumber()).rows();
    }

    private PlanChoice recommendedChoice() {
        return quote.choices().stream().filter(quote::isRecommended).findFirst().orElseThrow();
    }

    private String recommended() {
        PlanChoice choice = recommendedChoice();
        Fact name = quote.recommended().named();
        return sentences.say(Phrase.of(span().key("plan.recommend"), name,
                choice.fullCleans() == choice.visits()
                        ? Fact.number(choice.visits(), "full-cleaning")
                        : Fact.number(choice.visits(), "visit"),
                new Fact.Amount(choice.net())));
    }

    /** How often machines should be cleaned and why, what the plan is short of that, and what comes on top in the first year. */
    private List<String> why() {
        List<String> why = new ArrayList<>();
        int months = quote.interval().months();
        List<String> reasons = quote.interval().reasons().stream().map(sentences::say).toList();
        why.add(sentences.say(Phrase.of("plan.interval", Fact.number(months, "month"),
                new Fact.Text(String.join("; ", reasons)))));
        Optional<Integer> gap = recommendedChoice().months();
        if (gap.filter(found -> found <= months).isEmpty()) {
            why.add(sentences.say(Phrase.of("plan.nearest", Fact.number(months, "month"))));
        }
        quote.catchUp().filter(price -> !price.extra().isZero()).ifPresent(price -> why.add(catchUp(price)));
        return List.copyOf(why);
    }

    private String catchUp(CatchUpPrice price) {
        MonetaryAmount first = recommendedChoice().net().add(price.extra());
        return sentences.say(Phrase.of("plan.first-year", new Fact.Amount(price.extra()), new Fact.Amount(first)));
    }

    private String lastYear(PastCalls past) {
        if (past.calls() < 2) {
            return past.calls() == 0
                    ? sentences.word("plan.no-calls")
                    : sentences.say(Phrase.of("plan.one-call", new Fact.Amount(past.each())));
        }
        return sentences.say(Phrase.of("plan.past-calls", Fact.number(past.calls(), "call"),
                new Fact.Amount(past.each()), new Fact.Text(sentences.formula(past.how().figure())),
                new Fact.Amount(past.together())));
    }

    private List<String> terms() {
        List<String> terms = new ArrayList<>();
        terms.add(sentences.say(Phrase.of("plan.term", Fact.number(quote.term().months(), "month"),
                new Fact.Day(quote.term().start()))));
        terms.add(sentences.word("plan.billed." + span().billing(quote.billing())));
        terms.add(sentences.say(Phrase.of("plan.holds", new Fact.Day(quote.validUntil()))));
        terms.add(sentences.word("plan.tax-estimated"));
        terms.add(sentences.word(quote.customerEmptiesBin() ? "plan.bin-customer" : "plan.bin-shop"));
        terms.add(sentences.word("plan.other-calls"));
        quote.remarks().forEach(remark -> terms.add(sentences.say(remark)));
        return List.copyOf(terms);
    }

    private PriceSpan span() {
        return new PriceSpan(quote.term());
    }
}
