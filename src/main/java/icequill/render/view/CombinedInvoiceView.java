package icequill.render.view;

import icequill.document.CombinedInvoice;
import icequill.document.VisitSummary;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** An invoice of several visits as texts, ready for {@code combined-invoice.ftlh}. */
public record CombinedInvoiceView(CombinedInvoice invoice, Sentences sentences) {

    public static Page of(CombinedInvoice invoice) {
        return new CombinedInvoiceView(invoice,
                Sentences.of(invoice.language(), invoice.shop().address().country())).page();
    }

    /** The visits. */
    record Visits(List<Part> parts) implements Texts {}

    /**
     * One visit with its lines, which are numbered through.
     *
     * @param closing the last line
     * @param sum of its lines, before tax
     */
    record Part(String heading, List<Details.Row> visitRows, List<VisitView.Machine> machines,
            List<LineView.Row> lines, List<LineView.Row> closing, String sum)
            implements
            Texts {}

    private Page page() {
        InvoiceHead head = new InvoiceHead(invoice, sentences);
        return Page.of(head.letter(facts()), head.due(),
                ChargesView.of(invoice, invoice.remarks(), head.label(), sentences).charged(), new Visits(parts()));
    }

    private List<Details.Row> facts() {
        String days = invoice.parts().stream().map(part -> part.attended().arrived().toLocalDate()).distinct()
                .map(sentences.formats()::day).collect(Collectors.joining("; "));
        return new Details(sentences).add("fact.date", sentences.formats().day(invoice.date()))
                .add("fact.services", days).add("fact.purchase-order", invoice.served().purchaseOrder())
                .add("fact.vendor", invoice.vendorNumber())
                .add(isOfSales() ? "fact.sales" : "fact.visits", invoice.visits()).rows();
    }

    private boolean isOfSales() {
        return invoice.parts().stream().allMatch(part -> part.attended().sold().isPresent());
    }

    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        int before = 0;
        for (CombinedInvoice.Part part : invoice.parts()) {
            int done = Math.toIntExact(part.lines().stream().filter(line -> line.outcome().isDone()).count());
            parts.add(part(part, IntStream.rangeClosed(before + 1, before + done).boxed().toList()));
            before += done;
        }
        return List.copyOf(parts);
    }

    private Part part(CombinedInvoice.Part part, List<Integer> numbers) {
        VisitView.Visited visit = new VisitView(part.attended(), part.machines(), sentences).visited();
        ChargesView.Charged charges = new ChargesView(part.lines(), numbers, invoice.totals(), List.of(), "",
                sentences).charged();
        return new Part(heading(part.attended()), visit.visitRows(), visit.machines(), charges.lines(),
                charges.closing(),
                sentences.formats().amount(part.sum(invoice.totals().net().getCurrency())));
    }

    private String heading(VisitSummary attended) {
        String site = attended.storeNumber().map(store -> attended.site() + ", " + store).orElse(attended.site());
        return sentences.word("invoice.part", sentences.formats().day(attended.arrived().toLocalDate()), site);
    }
}
