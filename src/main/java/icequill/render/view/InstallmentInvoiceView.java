package icequill.render.view;

import icequill.agreement.MonthByMonth;
import icequill.document.InstallmentInvoice;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.List;

/** The invoice of an agreement's payment as texts, ready for {@code installment-invoice.ftlh}. */
public record InstallmentInvoiceView(InstallmentInvoice invoice, Sentences sentences) {

    public static Page of(InstallmentInvoice invoice) {
        String country = invoice.shop().address().country();
        return new InstallmentInvoiceView(invoice, Sentences.of(invoice.language(), country)).page();
    }

    /** The agreement, and which of its payments it is. */
    record Payment(List<Details.Row> agreement) implements Texts {}

    private Page page() {
        InvoiceHead head = new InvoiceHead(invoice, sentences);
        return Page.of(head.letter(facts()), head.due(), new Payment(agreement()),
                ChargesView.of(invoice, invoice.remarks(), head.label(), sentences).charged());
    }

    private List<Details.Row> agreement() {
        return new Details(sentences).add("agreement.number", invoice.agreement())
                .add("agreement.plan", Sentences.capitalized(sentences.in(invoice.plan())))
                .add("agreement.payment", MonthByMonth.isAfterTerm(invoice.payment())
                        ? sentences.word("agreement.payment-after-term")
                        : sentences.say(Phrase.of("agreement.payment-of", Fact.number(invoice.payment(), ""),
                                Fact.number(invoice.payments(), ""))))
                .add("agreement.covers", sentences.say(Phrase.of("agreement.from-to",
                        new Fact.Day(invoice.served().from()), new Fact.Day(invoice.served().until()))))
                .rows();
    }

    private List<Details.Row> facts() {
        return new Details(sentences).add("fact.date", sentences.formats().day(invoice.date()))
                .add("visit.site", invoice.served().site()).add("fact.store", invoice.served().storeNumber())
                .add("fact.purchase-order", invoice.served().purchaseOrder())
                .add("fact.vendor", invoice.vendorNumber()).add("agreement.number", invoice.agreement()).rows();
    }
}
