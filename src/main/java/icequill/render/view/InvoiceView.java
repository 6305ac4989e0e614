package icequill.render.view;

import icequill.document.Invoice;
import icequill.render.words.Sentences;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An invoice as texts, ready for {@code invoice.ftlh}. */
public record InvoiceView(Invoice invoice, Sentences sentences) {

    public static Map<String, Object> of(Invoice invoice) {
        String country = invoice.shop().address().country();
        return new InvoiceView(invoice, Sentences.of(invoice.language(), country)).model();
    }

    private Map<String, Object> model() {
        InvoiceHead head = new InvoiceHead(invoice, sentences);
        Map<String, Object> model = new LinkedHashMap<>(head.model(facts()));
        model.putAll(new VisitView(invoice.attended(), invoice.machines(), sentences).model());
        model.putAll(ChargesView.of(invoice, invoice.remarks(), head.label(),
                sentences).model());
        return model;
    }

    private List<Map<String, String>> facts() {
        return new Details(sentences).add("fact.date", sentences.formats().day(invoice.date()))
                .add("fact.service", sentences.formats().day(invoice.attended().arrived().toLocalDate()))
                .add("fact.purchase-order", invoice.attended().order().purchaseOrder())
                .add("fact.store",
                        invoice.attended().storeNumber().map(store -> store + ", " + invoice.attended().site()))
                .add("fact.vendor", invoice.vendorNumber())
                .add("fact.visit", invoice.attended().visit()).rows();
    }
}
