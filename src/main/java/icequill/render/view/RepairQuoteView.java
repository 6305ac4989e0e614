package icequill.render.view;

import icequill.document.RepairQuote;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import icequill.tax.Stage;
import java.util.ArrayList;
import java.util.List;

/** A repair quote as texts, ready for {@code repair-quote.ftlh}. */
public record RepairQuoteView(RepairQuote quote, Sentences sentences) {

    public static Page of(RepairQuote quote) {
        String country = quote.shop().address().country();
        return new RepairQuoteView(quote, Sentences.of(quote.language(), country)).page();
    }

    /**
     * What is offered.
     *
     * @param found on which visit, and what; may be empty
     * @param work in the shop's own words
     * @param parts in which it is paid; may be empty
     * @param isHeldBack whether something of them is
     */
    record Offer(String currency, String amount, String validUntil, String machine, List<Details.Row> found,
            String work, List<Part> parts, boolean isHeldBack, List<String> terms)
            implements
            Texts {}

    record Part(String what, String how, String net, String tax, String held, String due) implements Texts {}

    private Page page() {
        LetterView.Title title = new LetterView.Title(
                sentences.word(quote.number().isPresent() ? "quote.repair" : "quote.repair-draft"),
                quote.number());
        String currency = quote.totals().gross().getCurrency().getCurrencyCode();
        return Page.of(new LetterView(quote, title, sentences).letter(quote.billTo(), quote.isDraft(), facts()),
                new Offer(currency, currency + "\u00a0" + sentences.formats().amount(quote.totals().gross()),
                        sentences.formats().day(quote.validUntil()),
                        new MachineName(quote.machine(), sentences).text(), found(), quote.work(), parts(),
                        stages().stream().anyMatch(stage -> !stage.held().isZero()), terms()),
                ChargesView.of(quote, quote.remarks(), sentences.word("total.quoted"), sentences).charged());
    }

    private List<Details.Row> facts() {
        return new Details(sentences).add("fact.quote-date", sentences.formats().day(quote.date()))
                .add("fact.purchase-order", quote.served().purchaseOrder())
                .add("visit.site", quote.served().site()).add("fact.store", quote.served().storeNumber())
                .add("fact.vendor", quote.vendorNumber()).rows();
    }

    private List<Details.Row> found() {
        Details details = new Details(sentences);
        quote.found().ifPresent(found -> details.add("quote.found-on", sentences.formats().day(found.day()))
                .add("machine.complaint", found.complaint()).add("machine.cause", found.cause())
                .add("quote.recommended", found.recommended()));
        return details.rows();
    }

    /** A deposit and the rest stand among the terms. */
    private List<Stage> stages() {
        return quote.deposit().isPresent()
                ? List.of()
                : quote.parts().map(RepairQuote.InParts::stages).orElse(List.of());
    }

    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        for (Stage stage : stages()) {
            parts.add(new Part(
                    stage.kind() == Stage.Kind.RELEASE
                            ? sentences.word("stage.release")
                            : sentences.say(Phrase.of("stage.progress", Fact.number(parts.size() + 1L, ""))),
                    sentences.how(stage.how(), stage.due()), sentences.formats().amount(stage.net()),
                    sentences.formats().amount(stage.tax()), sentences.formats().amount(stage.held()),
                    sentences.formats().amount(stage.due())));
        }
        return List.copyOf(parts);
    }

    private List<String> terms() {
        List<String> terms = new ArrayList<>();
        terms.add(sentences.say(Phrase.of("quote.planned", new Fact.Day(quote.served().from()))));
        quote.deposit().ifPresent(deposit -> terms.add(sentences.say(Phrase.of("quote.deposit",
                new Fact.Amount(deposit.amount()), new Fact.Part(deposit.percent()),
                new Fact.Amount(deposit.rest())))));
        terms.add(sentences.word("quote.tax-estimated"));
        terms.add(sentences.word("quote.more"));
        return List.copyOf(terms);
    }
}
