package icequill.render.view;

import icequill.document.Invoice;
import icequill.render.page.Page;
import icequill.render.words.Sentences;
import java.util.List;

/** An invoice as texts, ready for {@code invoice.ftlh}. */
public record InvoiceView(Invoice invoice, Sentences sentences) {

    public static Page of(Invoice invoice) {
        String country = invoice.shop().address().country();
        return new InvoiceView(invoice, Sentences.of(invoice.language(), country)).page();
    }

    private Page page() {
        InvoiceHead head = new InvoiceHead(invoice, sentences);
        return Page.of(head.letter(facts()), head.due(),
                new VisitView(invoice.attended(), invoice.machines(), sentences).visited(),
                ChargesView.of(invoice, invoice.remarks(), head.label(), sentences).charged());
    }

    private List<Details.Row> facts() {
        return new Details(sentences).add("fact.date", sentences.formats().day(invoice.date()))
                .add(invoice.attended().sold().isPresent() ? "fact.sold" : "fact.service",
                        sentences.formats().day(invoice.attended().arrived().toLocalDate()))
                .add("fact.purchase-order", invoice.attended().order().purchaseOrder())
                .add("fact.store",
                        invoice.attended().storeNumber().map(store -> store + ", " + invoice.attended().site()))
                .add("fact.vendor", invoice.vendorNumber())
                .add(invoice.attended().sold().isPresent() ? "fact.sale" : "fact.visit", invoice.attended().visit())
                .rows();
    }
}
