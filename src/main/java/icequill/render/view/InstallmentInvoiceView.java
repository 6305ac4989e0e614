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
    record Payment(List<Details.Row> agreement, List<Store> stores) implements Texts {}

    /** What is asked for one of several sites, before tax. */
    record Store(String name, String address, String sum) implements Texts {}

    private Page page() {
        InvoiceHead head = new InvoiceHead(invoice, sentences);
        return Page.of(head.letter(facts()), head.due(), new Payment(agreement(), stores()),
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

    private List<Store> stores() {
        return invoice.sites().map(InstallmentInvoice.BilledSites::all).orElse(List.of()).stream()
                .map(site -> new Store(
                        site.where().storeNumber().map(store -> site.where().site() + ", " + store)
                                .orElse(site.where().site()),
                        String.join(", ", site.where().address().lines()),
                        sentences.formats().amount(invoice.netAt(site.id()))))
                .toList();
    }

    private List<Details.Row> facts() {
        return new Details(sentences).add("fact.date", sentences.formats().day(invoice.date()))
                .add("visit.site", invoice.sites().map(sites -> sentences.say(Phrase.of("agreement.sites-count",
                        Fact.number(sites.all().size(), "")))).orElse(invoice.served().site()))
                .add("fact.store", invoice.served().storeNumber())
                .add("fact.purchase-order", invoice.served().purchaseOrder())
                .add("fact.vendor", invoice.vendorNumber()).add("agreement.number", invoice.agreement()).rows();
    }
}
