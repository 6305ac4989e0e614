package icequill.render;

import icequill.document.Invoice;
import icequill.party.BillTo;
import icequill.party.Shop;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** An invoice as texts, ready for {@code invoice.ftlh}. */
record InvoiceView(Invoice invoice, Sentences sentences) {

    static Map<String, Object> of(Invoice invoice) {
        String country = invoice.shop().address().country();
        return new InvoiceView(invoice, Sentences.of(invoice.language(), country)).model();
    }

    private Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("lang", invoice.language().tag());
        model.put("size", invoice.size().name().toLowerCase(Locale.ROOT));
        model.put("accent", invoice.shop().accent());
        model.put("w", Words.of(invoice.language()).all());
        model.put("title", title());
        model.put("draft", invoice.isDraft());
        model.put("currency", currency());
        model.put("shop", shop(invoice.shop()));
        model.put("billTo", billTo(invoice.billTo()));
        model.put("facts", facts());
        model.put("pay", pay());
        model.putAll(new VisitView(invoice.attended(), invoice.machines(), sentences).model());
        model.putAll(new ChargesView(invoice.lines(), invoice.totals(), invoice.remarks(), !invoice.isDraft(),
                sentences).model());
        return model;
    }

    private String title() {
        return invoice.number().map(number -> sentences.word("invoice.title") + " " + number)
                .orElseGet(() -> sentences.word("invoice.draft"));
    }

    private String currency() {
        return invoice.totals().gross().getCurrency().getCurrencyCode();
    }

    private static Map<String, Object> shop(Shop shop) {
        return Map.of("name", shop.name(), "lines", shop.address().lines(), "contact",
                shop.phone() + " · " + shop.email(), "registrations",
                shop.registrations().stream().map(entry -> entry.name() + " " + entry.value()).toList(), "payee",
                shop.remittance().payee(), "payeeLines", shop.remittance().address().lines(), "bank",
                shop.remittance().bank().stream().map(entry -> Details.pair(entry.name(), entry.value())).toList());
    }

    private static Map<String, Object> billTo(BillTo billTo) {
        List<String> lines = new ArrayList<>();
        billTo.attention().ifPresent(lines::add);
        lines.addAll(billTo.address().lines());
        return Map.of("name", billTo.name(), "lines", lines);
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
        return Map.of("label", sentences.word(invoice.isDraft() ? "total.draft" : "total.gross"), "amount",
                currency() + "\u00a0" + sentences.formats().amount(invoice.totals().gross()), "nothing", nothing, "by",
                asked ? sentences.formats().day(invoice.due()) : "");
    }
}
