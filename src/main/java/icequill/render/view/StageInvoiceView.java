package icequill.render.view;

import icequill.document.StageInvoice;
import icequill.explain.ConstantKey;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import java.util.List;

/** The invoice of a part of an accepted repair quote as texts, ready for {@code stage-invoice.ftlh}. */
public record StageInvoiceView(StageInvoice invoice, Sentences sentences) {

    public static Page of(StageInvoice invoice) {
        return new StageInvoiceView(invoice, Sentences.of(invoice.language(), invoice.shop().address().country()))
                .page();
    }

    /**
     * The quote, and which of its parts it is.
     *
     * @param after what becomes of it
     */
    record Asked(List<Details.Row> quote, String work, String after) implements Texts {}

    private Page page() {
        InvoiceHead head = new InvoiceHead(invoice, what(), sentences);
        return Page.of(head.letter(facts()), head.due(),
                new Asked(quote(), invoice.work(),
                        sentences.word("stage.after-" + ConstantKey.of(invoice.stage().kind()))),
                ChargesView.of(invoice, invoice.remarks(), head.label(), sentences).charged());
    }

    /** As UNTDID 1001 tells a prepayment (386) and a partial invoice (326) from one of the whole. */
    private String what() {
        return switch (invoice.stage().kind()) {
        case DEPOSIT, FINAL -> sentences.word("stage.title.deposit");
        case PROGRESS -> sentences.say(Phrase.of("stage.title.part", Fact.number(invoice.part(), "")));
        case RELEASE -> sentences.word("stage.title.release");
        };
    }

    private List<Details.Row> quote() {
        return new Details(sentences)
                .add("stage.quote", sentences.say(Phrase.of("stage.quote-of",
                        new Fact.Text(invoice.quote().number()), new Fact.Day(invoice.quote().date()))))
                .add("stage.part", switch (invoice.stage().kind()) {
                case PROGRESS -> sentences.say(Phrase.of("stage.progress", Fact.number(invoice.part(), "")));
                case DEPOSIT, FINAL -> sentences.word("stage.deposit");
                case RELEASE -> sentences.word("stage.release");
                })
                .add("sheet.machine", new MachineName(invoice.machine(), sentences).text())
                .add("stage.planned", sentences.formats().day(invoice.served().from())).rows();
    }

    private List<Details.Row> facts() {
        return new Details(sentences).add("fact.date", sentences.formats().day(invoice.date()))
                .add("visit.site", invoice.served().site()).add("fact.store", invoice.served().storeNumber())
                .add("fact.purchase-order", invoice.served().purchaseOrder())
                .add("fact.vendor", invoice.vendorNumber()).add("stage.quote", invoice.quote().number()).rows();
    }
}
