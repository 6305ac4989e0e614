package icequill.render.view;

import icequill.document.CreditNote;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.List;

/** A credit note as texts, ready for {@code credit-note.ftlh}. */
public record CreditNoteView(CreditNote credit, Sentences sentences) {

    public static Page of(CreditNote credit) {
        String country = credit.shop().address().country();
        return new CreditNoteView(credit, Sentences.of(credit.language(), country)).page();
    }

    /**
     * What is given back.
     *
     * @param numbered which lines the numbers are of
     * @param credited the invoice that is corrected
     */
    record Credited(String currency, String numbered, String reason, String amount, String credited)
            implements
            Texts {}

    private Page page() {
        LetterView.Title title = new LetterView.Title(
                sentences.word(credit.number().isPresent() ? "credit.title" : "credit.draft"),
                credit.number());
        String currency = credit.totals().gross().getCurrency().getCurrencyCode();
        return Page.of(new LetterView(credit, title, sentences).letter(credit.billTo(), credit.isDraft(), facts()),
                new Credited(currency, sentences.word("credit.lines", credit.original().number()), credit.reason(),
                        currency + "\u00a0" + sentences.formats().amount(credit.totals().gross()),
                        sentences.word("credit.of", credit.original().number(),
                                sentences.formats().day(credit.original().date()))),
                new ChargesView(credit.lines(), credit.numbers(), credit.totals(), credit.remarks(),
                        sentences.word("total.credited"), sentences).charged());
    }

    private List<Details.Row> facts() {
        return new Details(sentences).add("fact.credit-date", sentences.formats().day(credit.date()))
                .add("fact.credited", credit.original().number())
                .add("fact.purchase-order", credit.served().purchaseOrder())
                .add("visit.site", credit.served().site())
                .add("fact.store", credit.served().storeNumber()).add("fact.vendor", credit.vendorNumber()).rows();
    }
}
