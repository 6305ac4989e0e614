package icequill.render.view;

import icequill.document.RepairQuote;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A repair quote as texts, ready for {@code repair-quote.ftlh}. */
public record RepairQuoteView(RepairQuote quote, Sentences sentences) {

    public static Map<String, Object> of(RepairQuote quote) {
        String country = quote.shop().address().country();
        return new RepairQuoteView(quote, Sentences.of(quote.language(), country)).model();
    }

    private Map<String, Object> model() {
        Title title = new Title(sentences.word(quote.number().isPresent() ? "quote.repair" : "quote.repair-draft"),
                quote.number());
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(quote, title, sentences).model(quote.billTo(), facts()));
        String currency = quote.totals().gross().getCurrency().getCurrencyCode();
        model.put("draft", quote.isDraft());
        model.put("currency", currency);
        model.put("amount", currency + "\u00a0" + sentences.formats().amount(quote.totals().gross()));
        model.put("validUntil", sentences.formats().day(quote.validUntil()));
        model.put("machine", new MachineName(quote.machine(), sentences).text());
        model.put("found", found());
        model.put("work", quote.work());
        model.put("terms", terms());
        model.putAll(ChargesView.of(quote, quote.remarks(), sentences.word("total.quoted"),
                sentences).model());
        return model;
    }

    private List<Map<String, String>> facts() {
        return new Details(sentences).add("fact.quote-date", sentences.formats().day(quote.date()))
                .add("fact.purchase-order", quote.served().purchaseOrder())
                .add("visit.site", quote.served().site()).add("fact.store", quote.served().storeNumber())
                .add("fact.vendor", quote.vendorNumber()).rows();
    }

    private List<Map<String, String>> found() {
        Details details = new Details(sentences);
        quote.found().ifPresent(found -> details.add("quote.found-on", sentences.formats().day(found.day()))
                .add("machine.complaint", found.complaint()).add("machine.cause", found.cause())
                .add("quote.recommended", found.recommended()));
        return details.rows();
    }

    private List<String> terms() {
        List<String> terms = new ArrayList<>();
        terms.add(sentences.say(Phrase.of("quote.planned", new Fact.Day(quote.served().from()))));
        quote.deposit().ifPresent(deposit -> terms.add(sentences.say(Phrase.of("quote.deposit",
                new Fact.Amount(deposit.amount()), new Fact.Part(deposit.percent()),
                new Fact.Amount(deposit.rest())))));
        terms.add(sentences.word("quote.tax-estimated"));
        terms.add(sentences.word("quote.more"));
        return terms;
    }
}
