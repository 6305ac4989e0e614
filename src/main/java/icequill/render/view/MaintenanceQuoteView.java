package icequill.render.view;

import icequill.agreement.Billing;
import icequill.agreement.Tier;
import icequill.document.CatchUpPrice;
import icequill.document.MaintenanceQuote;
import icequill.document.PlanChoice;
import icequill.document.PlanYear;
import icequill.explain.ConstantKey;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.Wording;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;

/** A maintenance quote as texts, ready for {@code maintenance-quote.ftlh}. */
public record MaintenanceQuoteView(MaintenanceQuote quote, Sentences sentences) {

    public static Map<String, Object> of(MaintenanceQuote quote) {
        String country = quote.shop().address().country();
        return new MaintenanceQuoteView(quote, Sentences.of(quote.language(), country)).model();
    }

    private Map<String, Object> model() {
        Title title = new Title(sentences.word(quote.number().isPresent() ? "plan.quote" : "plan.quote-draft"),
                quote.number());
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(quote, title, sentences).model(quote.billTo(), facts()));
        List<Tier> tiers = quote.plans().stream().map(PlanYear::tier).toList();
        PlanYearView years = new PlanYearView(sentences);
        model.put("draft", quote.number().isEmpty());
        model.put("currency", quote.choices().getFirst().net().getCurrency().getCurrencyCode());
        model.put("machines",
                quote.machines().stream().map(machine -> new MachineName(machine, sentences).text()).toList());
        model.put("interval", sentences.say(Phrase.of("plan.interval",
                Fact.number(quote.interval().months(), "month"))));
        model.put("reasons", quote.interval().reasons().stream().map(sentences::say).map(Sentences::capitalized)
                .toList());
        model.put("choices", quote.choices().stream().map(this::choice).toList());
        model.put("calls", new CallChargesView(quote.calls(), sentences).model(tiers));
        model.put("plans", quote.plans().stream().map(years::model).toList());
        model.put("excluded", years.sentencesOf(
                tiers.stream().flatMap(tier -> tier.exclusions().stream()).distinct().toList()));
        model.put("catchUp", quote.catchUp().map(this::catchUp).orElse(Map.of()));
        model.put("terms", terms());
        return model;
    }

    private List<Map<String, String>> facts() {
        return new Details(sentences).add("fact.quote-date", sentences.formats().day(quote.date()))
                .add("fact.valid-until", sentences.formats().day(quote.validUntil()))
                .add("visit.site", quote.where().site()).add("fact.store", quote.where().storeNumber())
                .add("fact.vendor", quote.vendorNumber()).rows();
    }

    private Map<String, Object> choice(PlanChoice choice) {
        Map<String, Object> row = new LinkedHashMap<>();
        String name = sentences.word("choice.name." + ConstantKey.of(choice.kind()), plan(choice.plan()));
        row.put("name", Sentences.capitalized(name));
        row.put("visits", choice.visits() == 0
                ? sentences.word("choice.no-visits")
                : sentences.word("choice.visits", String.valueOf(choice.visits()),
                        String.valueOf(choice.fullCleans())));
        row.put("net", planned(choice, choice.net()));
        row.put("tax", planned(choice, choice.tax()));
        row.put("gross", planned(choice, choice.gross()));
        row.put("payments", payments(choice));
        row.put("why", choice.reasons().stream().map(sentences::say).map(Sentences::capitalized)
                .collect(Collectors.joining(" ")));
        return row;
    }

    private String planned(PlanChoice choice, MonetaryAmount amount) {
        return choice.visits() == 0 ? sentences.word("choice.by-call") : sentences.formats().amount(amount);
    }

    private String plan(Optional<Wording> plan) {
        return plan.map(sentences::in).orElse("");
    }

    /** Payments that are alike are counted: "4 × 171.25". */
    private List<String> payments(PlanChoice choice) {
        Map<String, Integer> counted = new LinkedHashMap<>();
        choice.payments()
                .forEach(payment -> counted.merge(sentences.formats().amount(payment.amount()), 1, Integer::sum));
        return counted.isEmpty()
                ? List.of(sentences.word(choice.visits() == 0 ? "choice.by-call" : "choice.by-visit"))
                : counted.entrySet().stream().map(entry -> entry.getValue() + " × " + entry.getKey()).toList();
    }

    private Map<String, Object> catchUp(CatchUpPrice price) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("surveyed", sentences.say(Phrase.of("catch-up.surveyed", new Fact.Day(price.surveyed()))));
        model.put("machines", price.machines().stream().map(this::found).toList());
        model.put("lines", price.lines().stream().map(line -> new LineView(line, sentences).row(false)).toList());
        model.put("whole", sentences.formats().amount(price.whole()));
        model.put("usual", sentences.formats().amount(price.usual().negate()));
        model.put("extra", sentences.formats().amount(price.extra()));
        return model;
    }

    private Map<String, String> found(CatchUpPrice.Found machine) {
        return Map.of("where", Sentences.capitalized(machine.where()), "lastCleaned",
                machine.lastCleaned().map(day -> sentences.formats().day(day))
                        .orElseGet(() -> sentences.word("catch-up.unknown")),
                "found", Sentences.capitalized(machine.found().isEmpty()
                        ? sentences.word("catch-up.fair")
                        : joined(machine.found())),
                "note", machine.note().orElse(""), "tasks", Sentences.capitalized(joined(machine.tasks())));
    }

    private String joined(List<Wording> texts) {
        return texts.stream().map(sentences::in).collect(Collectors.joining("; "));
    }

    private List<String> terms() {
        List<String> terms = new ArrayList<>();
        terms.add(sentences.say(Phrase.of("plan.term", Fact.number(quote.term().months(), "month"),
                new Fact.Day(quote.term().start()))));
        terms.add(sentences.word("billing." + billingKey(quote.billing())));
        terms.add(sentences.say(Phrase.of("plan.holds", new Fact.Day(quote.validUntil()))));
        terms.add(sentences.word("plan.tax-estimated"));
        terms.add(sentences.word(quote.customerEmptiesBin() ? "plan.bin-customer" : "plan.bin-shop"));
        terms.add(sentences.word("plan.other-calls"));
        quote.remarks().forEach(remark -> terms.add(sentences.say(remark)));
        return terms;
    }

    static String billingKey(Optional<Billing> billing) {
        return billing.map(ConstantKey::of).orElse("per-visit");
    }
}
