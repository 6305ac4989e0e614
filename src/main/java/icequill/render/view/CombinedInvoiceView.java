package icequill.render.view;

import icequill.document.CombinedInvoice;
import icequill.document.VisitSummary;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** An invoice of several visits as texts, ready for {@code combined-invoice.ftlh}. */
public record CombinedInvoiceView(CombinedInvoice invoice, Sentences sentences) {

    public static Map<String, Object> of(CombinedInvoice invoice) {
        return new CombinedInvoiceView(invoice,
                Sentences.of(invoice.language(), invoice.shop().address().country())).model();
    }

    private Map<String, Object> model() {
        InvoiceHead head = new InvoiceHead(invoice, sentences);
        Map<String, Object> model = new LinkedHashMap<>(head.model(facts()));
        model.putAll(ChargesView.of(invoice, invoice.remarks(), head.label(), sentences).model());
        model.put("parts", parts());
        return model;
    }

    private List<Map<String, String>> facts() {
        String days = invoice.parts().stream().map(part -> part.attended().arrived().toLocalDate()).distinct()
                .map(sentences.formats()::day).collect(Collectors.joining("; "));
        return new Details(sentences).add("fact.date", sentences.formats().day(invoice.date()))
                .add("fact.services", days).add("fact.purchase-order", invoice.served().purchaseOrder())
                .add("fact.vendor", invoice.vendorNumber()).add("fact.visits", invoice.visits()).rows();
    }

    /** Each visit with its lines, which are numbered through, and what they come to. */
    private List<Map<String, Object>> parts() {
        List<Map<String, Object>> parts = new ArrayList<>();
        int before = 0;
        for (CombinedInvoice.Part part : invoice.parts()) {
            int done = Math.toIntExact(part.lines().stream().filter(line -> line.outcome().isDone()).count());
            Map<String, Object> view = new LinkedHashMap<>(
                    new VisitView(part.attended(), part.machines(), sentences).model());
            Map<String, Object> charges = new ChargesView(part.lines(),
                    IntStream.rangeClosed(before + 1, before + done).boxed().toList(), invoice.totals(), List.of(), "",
                    sentences).model();
            view.put("heading", heading(part.attended()));
            view.put("lines", charges.get("lines"));
            view.put("closing", charges.get("closing"));
            view.put("sum", sentences.formats().amount(part.sum(invoice.totals().net().getCurrency())));
            parts.add(view);
            before += done;
        }
        return parts;
    }

    private String heading(VisitSummary attended) {
        String site = attended.storeNumber().map(store -> attended.site() + ", " + store).orElse(attended.site());
        return sentences.word("invoice.part", sentences.formats().day(attended.arrived().toLocalDate()), site);
    }
}
