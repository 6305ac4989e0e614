package icequill.render.view;

import icequill.document.ComparisonSheet;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** A comparison of plans with calls as texts, ready for {@code comparison-sheet.ftlh}. */
public record ComparisonSheetView(ComparisonSheet sheet, Sentences sentences) {

    public static Page of(ComparisonSheet sheet) {
        String country = sheet.shop().address().country();
        return new ComparisonSheetView(sheet, Sentences.of(sheet.language(), country)).page();
    }

    /**
     * What the sheet says.
     *
     * @param headlines from how many calls each plan pays
     * @param lastYear may be empty
     * @param call how one is figured
     * @param sums of so many calls
     * @param outlook of shops that have something to forecast by
     */
    record Compared(String currency, List<String> machines, List<String> headlines, String lastYear,
            List<CallLine> call, String callLabel, String callPrice, List<Plan> plans, List<Calls> sums,
            List<String> reasons, Optional<OutlookView.Ahead> outlook)
            implements
            Texts {}

    record CallLine(String text, String how, String amount) implements Texts {}

    /**
     * A plan.
     *
     * @param singly what its visits cost without it
     * @param how may be empty
     */
    record Plan(String name, String visits, String price, String singly, String saves, String breakEven, String how)
            implements
            Texts {}

    /** @param differences how much less each plan costs */
    record Calls(String calls, String how, String price, List<String> differences) implements Texts {}

    private Page page() {
        String title = sentences.word(sheet.outlook().isPresent() ? "outlook.title" : "compare.title");
        return Page.of(new LetterView(sheet, title, sentences).letter(sheet.customer(), sheet.where().site(),
                sheet.where().address(), facts()), compared());
    }

    private Compared compared() {
        return new Compared(sheet.callPrice().getCurrency().getCurrencyCode(),
                sheet.machines().stream().map(machine -> new MachineName(machine, sentences).text()).toList(),
                sheet.plans().stream().map(this::headline).toList(),
                sheet.lastYear()
                        .map(calls -> sentences.say(Phrase.of("compare.last-year", Fact.number(calls, "call"))))
                        .orElse(""),
                sheet.call().stream().map(this::line).toList(),
                sentences.word("compare.call", sentences.in(sheet.band().name())), amount(sheet.callPrice()),
                sheet.plans().stream().map(this::plan).toList(), sheet.sums().stream().map(this::sum).toList(),
                sheet.reasons().stream().map(sentences::say).toList(),
                sheet.outlook().map(outlook -> new OutlookView(outlook, sentences).ahead()));
    }

    private List<Details.Row> facts() {
        return new Details(sentences).add("compare.date", sentences.formats().day(sheet.date()))
                .add("fact.store", sheet.where().storeNumber()).rows();
    }

    private String headline(ComparisonSheet.Plan plan) {
        Fact name = plan.name().named();
        return Sentences.capitalized(plan.breakEven()
                .map(calls -> sentences.say(Phrase.of("compare.pays-if", name, Fact.number(calls, "call"))))
                .orElseGet(() -> sentences.say(Phrase.of("compare.never-pays", name))));
    }

    private CallLine line(ComparisonSheet.CallLine line) {
        return new CallLine(Sentences.capitalized(sentences.say(line.text())), sentences.how(line.how(), line.net()),
                amount(line.net()));
    }

    private Plan plan(ComparisonSheet.Plan plan) {
        return new Plan(Sentences.capitalized(sentences.in(plan.name())),
                sentences.say(Phrase.of("choice.visits", Fact.number(plan.visits(), "visit"),
                        Fact.number(plan.fullCleans(), "full-cleaning"))),
                amount(plan.price()), amount(plan.singly()), amount(plan.singly().subtract(plan.price())),
                plan.breakEven().map(String::valueOf).orElse("–"),
                plan.breakEven().map(calls -> sentences.formula(plan.how().figure())).orElse(""));
    }

    /** So many calls, and what a plan's price is more than they cost; negative when the calls cost more. */
    private Calls sum(ComparisonSheet.Sum sum) {
        return new Calls(String.valueOf(sum.calls()), sentences.formula(sum.how().figure()), amount(sum.price()),
                sheet.plans().stream().map(plan -> amount(sum.price().subtract(plan.price()))).toList());
    }

    private String amount(MonetaryAmount amount) {
        return sentences.formats().amount(amount);
    }
}
