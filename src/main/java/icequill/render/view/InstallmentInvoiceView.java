package icequill.render.view;

import icequill.document.InstallmentInvoice;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.render.words.Sentences;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The invoice of an agreement's payment as texts, ready for {@code installment-invoice.ftlh}. */
public record InstallmentInvoiceView(InstallmentInvoice invoice, Sentences sentences) {

    public static Map<String, Object> of(InstallmentInvoice invoice) {
        String country = invoice.shop().address().country();
        return new InstallmentInvoiceView(invoice, Sentences.of(invoice.language(), country)).model();
    }

    private Map<String, Object> model() {
        InvoiceHead head = new InvoiceHead(invoice, sentences);
        Map<String, Object> model = new LinkedHashMap<>(head.model(facts()));
        model.put("agreement", new Details(sentences).add("agreement.number", invoice.agreement())
                .add("agreement.plan", Sentences.capitalized(sentences.in(invoice.plan())))
                .add("agreement.payment", sentences.say(Phrase.of("agreement.payment-of",
                        Fact.number(invoice.payment(), ""), Fact.number(invoice.payments(), ""))))
                .add("agreement.covers", sentences.say(Phrase.of("agreement.from-to",
                        new Fact.Day(invoice.served().from()), new Fact.Day(invoice.served().until()))))
                .rows());
        model.putAll(ChargesView.of(invoice, invoice.remarks(), head.label(), sentences)
                .model());
        return model;
    }

    private List<Map<String, String>> facts() {
        return new Details(sentences).add("fact.date", sentences.formats().day(invoice.date()))
                .add("visit.site", invoice.served().site()).add("fact.store", invoice.served().storeNumber())
                .add("fact.purchase-order", invoice.served().purchaseOrder())
                .add("fact.vendor", invoice.vendorNumber()).add("agreement.number", invoice.agreement()).rows();
    }
}
