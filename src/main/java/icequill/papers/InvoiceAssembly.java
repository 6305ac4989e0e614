package icequill.papers;

import icequill.document.CreditNote;
import icequill.document.Invoice;
import icequill.document.Invoice.AdvanceBill;
import icequill.document.Invoice.Advanced;
import icequill.document.InvoiceLine;
import icequill.document.StageInvoice;
import icequill.document.Totals;
import icequill.document.VisitSummary;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.request.PaperOptions;
import icequill.tax.TaxedVisit;
import icequill.visits.ChargeSheet;
import icequill.visits.VisitContext;
import icequill.visits.VisitReport;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Puts an invoice together from a priced and taxed visit, leaving behind all that only the owner may see.
 *
 * @param billTo of the invoice's date
 */
public record InvoiceAssembly(Shop shop, Site site, Visit visit, Rates rates, TaxedVisit taxed, BillTo billTo,
        Language language) {

    /**
     * The invoice of a visit, or why there is none.
     *
     * @param before what was asked for before of the job that it was
     */
    public static Validated<Invoice> of(VisitContext hand, List<AdvanceBill> before, PaperOptions options) {
        return dated(hand, options).then(later -> hand.site().billTo(options.date()))
                .then(billTo -> new InvoiceAssembly(hand.shop(), hand.site(), hand.visit(), hand.rates(), hand.taxed(),
                        billTo, hand.language(options.language())).invoice(before, options.number(), options.date()));
    }

    /** What an invoice of a part of the work asked for, less what was given back of it. */
    public static AdvanceBill before(StageInvoice part, List<CreditNote> credits) {
        return AdvanceAssembly.of(part, credits);
    }

    /** The visit, unless its invoice would bear an earlier day. */
    static Validated<VisitContext> dated(VisitContext hand, PaperOptions options) {
        LocalDate ended = hand.visit().ended().toLocalDate();
        return options.number().isPresent() && options.date().isBefore(ended)
                ? Validated.invalid(new Problem(Code.WRONG_ORDER, Place.NOWHERE,
                        "dated " + options.date() + ", but visit \"" + hand.visit().id() + "\" ended on " + ended,
                        "that day or a later one"))
                : Validated.valid(hand);
    }

    private Validated<Invoice> invoice(List<AdvanceBill> before, Optional<String> number, LocalDate date) {
        ChargeSheet sheet = new ChargeSheet(site, taxed);
        AdvanceAssembly advances = new AdvanceAssembly(sheet.lines(), sheet.totals(), before);
        return before.isEmpty()
                ? Validated.valid(invoice(number, date, sheet.lines(), sheet.totals(), Optional.empty()))
                : advances.left().map(
                        left -> invoice(number, date, advances.all(), left, Optional.of(advances.advanced())));
    }

    private Invoice invoice(Optional<String> number, LocalDate date, List<InvoiceLine> lines, Totals totals,
            Optional<Advanced> advanced) {
        VisitReport report = new VisitReport(site, visit, rates, language);
        LocalDate due = date.plusDays(site.customer().paymentDays().orElse(shop.paymentDays()));
        return new Invoice(number, date, due, shop, language, shop.paper(), billTo,
                site.customer().vendorNumber(), attended(report, shop), report.machines(), lines,
                new EarlyPaymentAssembly(totals, lines, shop.taxBasis(), date, due)
                        .offered(rates.adjustments().earlyPayment()),
                remarks(), advanced);
    }

    /** What is fetched is handed over at the shop. */
    static VisitSummary attended(VisitReport report, Shop shop) {
        VisitSummary attended = report.attended();
        return attended.isFetched() ? attended.at(shop.address()) : attended;
    }

    private List<Phrase> remarks() {
        List<Phrase> remarks = new ArrayList<>(taxed.remarks());
        visit.order().limit().ifPresent(limit -> remarks.add(Phrase.of("remark.limit", new Fact.Amount(limit))));
        return remarks;
    }
}
