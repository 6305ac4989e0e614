package icequill.render.view;

import icequill.document.CreditNote;
import icequill.render.words.Sentences;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A credit note as texts, ready for {@code credit-note.ftlh}. */
public record CreditNoteView(CreditNote credit, Sentences sentences) {

    public static Map<String, Object> of(CreditNote credit) {
        String country = credit.shop().address().country();
        return new CreditNoteView(credit, Sentences.of(credit.language(), country)).model();
    }

    private Map<String, Object> model() {
        Title title = new Title(sentences.word(credit.number().isPresent() ? "credit.title" : "credit.draft"),
                credit.number());
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(credit, title, sentences).model(credit.billTo(), facts()));
        String currency = credit.totals().gross().getCurrency().getCurrencyCode();
        model.put("draft", credit.isDraft());
        model.put("currency", currency);
        model.put("numbered", sentences.word("credit.lines", credit.original().number()));
        model.put("reason", credit.reason());
        model.put("amount", currency + "\u00a0" + sentences.formats().amount(credit.totals().gross()));
        model.put("credited", sentences.word("credit.of", credit.original().number(),
                sentences.formats().day(credit.original().date())));
        model.putAll(new ChargesView(credit.lines(), credit.numbers(), credit.totals(), credit.remarks(),
                sentences.word("total.credited"), sentences).model());
        return model;
    }

    private List<Map<String, String>> facts() {
        return new Details(sentences).add("fact.credit-date", sentences.formats().day(credit.date()))
                .add("fact.credited", credit.original().number())
                .add("fact.purchase-order", credit.served().purchaseOrder())
                .add("visit.site", credit.served().site())
                .add("fact.store", credit.served().storeNumber()).add("fact.vendor", credit.vendorNumber()).rows();
    }
}
