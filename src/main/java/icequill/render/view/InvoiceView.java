package icequill.render.view;

import icequill.document.Invoice;
import icequill.document.Totals;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import javax.money.MonetaryAmount;

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
                advanced(), ChargesView.of(invoice, invoice.remarks(), head.label(), sentences).charged());
    }

    /** The whole, what was invoiced before of it, and what is left; nothing where nothing was invoiced before. */
    record Advances(List<Advance> advances) implements Texts {}

    /** @param isLast whether it is what is left */
    record Advance(String what, String net, String tax, String gross, boolean isLast) implements Texts {}

    private Advances advanced() {
        List<Advance> rows = new ArrayList<>();
        invoice.advanced().ifPresent(advanced -> {
            rows.add(row(sentences.word("advance.whole"), advanced.whole(), false));
            advanced.bills().forEach(bill -> rows.add(new Advance(
                    sentences.say(Phrase.of("advance.less", new Fact.Text(bill.number()), new Fact.Day(bill.date()))),
                    amount(bill.net().negate()), amount(bill.tax().negate()), amount(bill.gross().negate()), false)));
            rows.add(row(sentences.word("advance.left"), invoice.totals(), true));
        });
        return new Advances(List.copyOf(rows));
    }

    private Advance row(String what, Totals totals, boolean isLast) {
        return new Advance(what, amount(totals.net()), amount(totals.tax()), amount(totals.gross()), isLast);
    }

    private String amount(MonetaryAmount amount) {
        return sentences.formats().amount(amount);
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
