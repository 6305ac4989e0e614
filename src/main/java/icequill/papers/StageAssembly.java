package icequill.papers;

import icequill.document.InvoiceLine;
import icequill.document.RepairQuote;
import icequill.document.StageInvoice;
import icequill.document.StageInvoice.AcceptedQuote;
import icequill.document.Totals;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.BillTo;
import icequill.party.Site;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.tax.Advances;
import icequill.tax.Advances.Retainages;
import icequill.tax.Stage;
import icequill.tax.StagedPrice;
import icequill.tax.TaxLeft;
import icequill.tax.TaxTotal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Puts the invoice of a part of an accepted repair quote together.
 *
 * @param quote that asks for parts
 * @param issued its number
 */
public record StageAssembly(RepairQuote quote, String issued, Site site) {

    /**
     * The invoice of one of the quote's parts; what is released is what the invoices of other parts hold back.
     *
     * @param part from 1
     * @param holding those invoices; of no account for any other part
     */
    public Validated<StageInvoice> invoice(int part, List<StageInvoice> holding, PaperOptions options) {
        Stage stage = stages().get(part - 1);
        return site.billTo(options.date()).map(billTo -> stage.kind() == Stage.Kind.RELEASE
                ? release(part, stage, holding, billTo, options)
                : paper(part, stage, ofPart(part), lines(part, stage), billTo, options));
    }

    private List<Stage> stages() {
        return quote.parts().map(RepairQuote.InParts::stages).orElse(List.of());
    }

    /** The tax of a part as if nothing were held back of it. */
    private List<TaxTotal> ofPart(int part) {
        Stage stage = stages().get(part - 1);
        return stage.kind() == Stage.Kind.PROGRESS && isTaxedAtRelease()
                ? heldTaxed().get(part - 1).taxes()
                : stage.taxes();
    }

    private boolean isTaxedAtRelease() {
        return quote.totals().taxPlace().advances().retainages() == Retainages.AT_RELEASE;
    }

    private List<Stage> heldTaxed() {
        List<Stage> parts = stages().stream().filter(stage -> stage.kind() == Stage.Kind.PROGRESS).toList();
        return new StagedPrice(quote.totals().net(), quote.totals().taxes(),
                new Advances(quote.totals().taxPlace().advances().deposits(), Retainages.WITH_PROGRESS))
                .progress(parts.stream().map(Stage::share).toList(), Percent.ZERO);
    }

    private List<InvoiceLine> lines(int part, Stage stage) {
        List<InvoiceLine> lines = new ArrayList<>(
                new StageLines(text(part, stage), why(stage), why(stage)).of(stage.net(), ofPart(part)));
        if (!stage.held().isZero()) {
            lines.addAll(held(stage.share(), stage.held().negate(), new TaxLeft(stage.taxes(), ofPart(part)).totals()));
        }
        return List.copyOf(lines);
    }

    /** What is held back, or released, with the tax that waits for its release. */
    private List<InvoiceLine> held(Percent share, MonetaryAmount held, List<TaxTotal> waiting) {
        Phrase why = Phrase.of(isTaxedAtRelease() ? "reason.held-untaxed" : "reason.held-taxed");
        String key = held.isNegative() ? "line.held-back" : "line.released";
        return new StageLines(Phrase.of(key, new Fact.Text(issued), new Fact.Part(share)), why, why).of(held, waiting);
    }

    private Phrase text(int part, Stage stage) {
        return Phrase.of(stage.kind() == Stage.Kind.DEPOSIT ? "line.deposit" : "line.progress",
                new Fact.Text(issued), new Fact.Part(stage.share()), Fact.number(part, ""));
    }

    private static Phrase why(Stage stage) {
        return stage.how().reasons().isEmpty() ? Phrase.of("reason.tax-left") : stage.how().reasons().getFirst();
    }

    private StageInvoice release(int part, Stage stage, List<StageInvoice> holding, BillTo billTo,
            PaperOptions options) {
        MonetaryAmount held = Amounts.sum(holding.stream().map(paper -> paper.stage().held()).toList(),
                quote.totals().net().getCurrency());
        List<TaxTotal> waiting = new TaxLeft(holding.stream().flatMap(paper -> paper.ofPart().stream()).toList(),
                holding.stream().flatMap(paper -> paper.stage().taxes().stream()).toList()).totals();
        List<InvoiceLine> lines = held(stage.share(), held, waiting);
        MonetaryAmount tax = Amounts.sum(waiting.stream().map(TaxTotal::tax).toList(), held.getCurrency());
        Explanation how = new Explanation(Figure.price(held, "").plus(Figure.price(tax, "")), stage.how().reasons());
        return paper(part, new Stage(stage.kind(), stage.share(), stage.net(), waiting, tax, held.negate(),
                how.amount(held.getCurrency()), how), List.of(), lines, billTo, options);
    }

    private StageInvoice paper(int part, Stage stage, List<TaxTotal> ofPart, List<InvoiceLine> lines, BillTo billTo,
            PaperOptions options) {
        MonetaryAmount net = Amounts.sum(lines.stream().map(InvoiceLine::net).toList(), stage.net().getCurrency());
        int days = site.customer().paymentDays().orElse(quote.shop().paymentDays());
        LocalDate date = options.date();
        return new StageInvoice(options.number(), date, date.plusDays(days), quote.shop(),
                options.language().orElse(quote.language()), quote.size(), billTo, site.customer().vendorNumber(),
                new AcceptedQuote(issued, quote.date()), quote.served(), quote.machine(), quote.work(), part, stage,
                ofPart, lines, new Totals(net, Optional.empty(), net, quote.totals().taxPlace(),
                        stage.taxes(), stage.tax(), net.add(stage.tax())),
                quote.remarks());
    }
}
