package icequill.render.view;

import icequill.document.ComparisonSheet;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.money.MonetaryAmount;

/** A comparison of plans with calls as texts, ready for {@code comparison-sheet.ftlh}. */
public record ComparisonSheetView(ComparisonSheet sheet, Sentences sentences) {

    public static Map<String, Object> of(ComparisonSheet sheet) {
        String country = sheet.shop().address().country();
        return new ComparisonSheetView(sheet, Sentences.of(sheet.language(), country)).model();
    }

    private Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(sheet, sentences.word(sheet.outlook().isPresent() ? "outlook.title" : "compare.title"),
                        sentences).model(sheet.customer(),
                                sheet.where().site(), sheet.where().address(), facts()));
        model.put("currency", sheet.callPrice().getCurrency().getCurrencyCode());
        model.put("machines",
                sheet.machines().stream().map(machine -> new MachineName(machine, sentences).text()).toList());
        model.put("headlines", sheet.plans().stream().map(this::headline).toList());
        model.put("lastYear", sheet.lastYear()
                .map(calls -> sentences.say(Phrase.of("compare.last-year", Fact.number(calls, "call")))).orElse(""));
        model.put("call", sheet.call().stream().map(this::line).toList());
        model.put("callLabel", sentences.word("compare.call", sentences.in(sheet.band().name())));
        model.put("callPrice", amount(sheet.callPrice()));
        model.put("plans", sheet.plans().stream().map(this::plan).toList());
        model.put("sums", sheet.sums().stream().map(this::sum).toList());
        model.put("reasons", sheet.reasons().stream().map(sentences::say).toList());
        sheet.outlook().ifPresent(outlook -> model.put("outlook", new OutlookView(outlook, sentences).model()));
        return model;
    }

    private List<Map<String, String>> facts() {
        return new Details(sentences).add("compare.date", sentences.formats().day(sheet.date()))
                .add("fact.store", sheet.where().storeNumber()).rows();
    }

    private String headline(ComparisonSheet.Plan plan) {
        Fact name = plan.name().named();
        return Sentences.capitalized(plan.breakEven()
                .map(calls -> sentences.say(Phrase.of("compare.pays-if", name, Fact.number(calls, "call"))))
                .orElseGet(() -> sentences.say(Phrase.of("compare.never-pays", name))));
    }

    private Map<String, String> line(ComparisonSheet.CallLine line) {
        return Map.of("text", Sentences.capitalized(sentences.say(line.text())), "how",
                sentences.how(line.how(), line.net()), "amount", amount(line.net()));
    }

    private Map<String, Object> plan(ComparisonSheet.Plan plan) {
        return Map.of("name", Sentences.capitalized(sentences.in(plan.name())), "visits",
                sentences.say(Phrase.of("choice.visits", Fact.number(plan.visits(), "visit"),
                        Fact.number(plan.fullCleans(), "full-cleaning"))),
                "price", amount(plan.price()), "singly", amount(plan.singly()), "saves",
                amount(plan.singly().subtract(plan.price())), "breakEven",
                plan.breakEven().map(String::valueOf).orElse("–"), "how",
                plan.breakEven().map(calls -> sentences.formula(plan.how().figure())).orElse(""));
    }

    /** So many calls, and what a plan's price is more than they cost; negative when the calls cost more. */
    private Map<String, Object> sum(ComparisonSheet.Sum sum) {
        return Map.of("calls", String.valueOf(sum.calls()), "how", sentences.formula(sum.how().figure()), "price",
                amount(sum.price()), "differences",
                sheet.plans().stream().map(plan -> amount(sum.price().subtract(plan.price()))).toList());
    }

    private String amount(MonetaryAmount amount) {
        return sentences.formats().amount(amount);
    }
}
