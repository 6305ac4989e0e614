package icequill.render;

import icequill.document.Invoice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An invoice as texts, ready for {@code invoice.ftlh}. */
record InvoiceView(Invoice invoice, Sentences sentences) {

    static Map<String, Object> of(Invoice invoice) {
        String country = invoice.shop().address().country();
        return new InvoiceView(invoice, Sentences.of(invoice.language(), country)).model();
    }

    private Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>(
                new LetterView(invoice, title(), sentences).model(invoice.billTo(), facts()));
        model.put("draft", invoice.isDraft());
        model.put("currency", currency());
        model.put("pay", pay());
        model.putAll(new VisitView(invoice.attended(), invoice.machines(), sentences).model());
        model.putAll(new ChargesView(invoice.lines(), invoice.totals(), invoice.remarks(), label(),
                sentences).model());
        return model;
    }

    private String title() {
        return invoice.number().map(number -> sentences.word("invoice.title") + " " + number)
                .orElseGet(() -> sentences.word("invoice.draft"));
    }

    private String label() {
        return sentences.word(invoice.isDraft() ? "total.draft" : "total.gross");
    }

    private String currency() {
        return invoice.totals().gross().getCurrency().getCurrencyCode();
    }

    private List<Map<String, String>> facts() {
        return new Details(sentences).add("fact.date", sentences.formats().day(invoice.date()))
                .add("fact.service", sentences.formats().day(invoice.attended().arrived().toLocalDate()))
                .add("fact.purchase-order", invoice.attended().order().purchaseOrder())
                .add("fact.store", invoice.attended().storeNumber()).add("fact.vendor", invoice.vendorNumber())
                .add("fact.visit", invoice.attended().visit()).rows();
    }

    /** A draft asks for no payment yet, and a sum of nothing for none at all. */
    private Map<String, Object> pay() {
        boolean nothing = invoice.totals().gross().isZero();
        boolean asked = !nothing && !invoice.isDraft();
        return Map.of("label", label(), "amount",
                currency() + "\u00a0" + sentences.formats().amount(invoice.totals().gross()), "nothing", nothing, "by",
                asked ? sentences.formats().day(invoice.due()) : "");
    }
}
