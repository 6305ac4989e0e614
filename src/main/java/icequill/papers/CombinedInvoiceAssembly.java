package icequill.papers;

import icequill.document.CombinedInvoice;
import icequill.document.CombinedInvoice.Part;
import icequill.document.Totals;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.pricer.SharedDiscount;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.visits.ChargeSheet;
import icequill.visits.VisitContext;
import icequill.visits.VisitReport;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Puts one invoice together from several priced and taxed visits. Nets are the sum of the visits'; tax by invoice is figured once for each
 * rate of a place on the sum of the bases, tax by item line by line as ever.
 *
 * @param visits in the order in which they began
 */
public record CombinedInvoiceAssembly(List<VisitContext> visits, BillTo billTo) {

    public CombinedInvoiceAssembly {
        visits = List.copyOf(visits);
    }

    /** The invoice of visits, two or more, or all that keeps them from being billed together. */
    public static Validated<CombinedInvoice> of(List<VisitContext> all, PaperOptions options) {
        List<VisitContext> visits = placed(all).sorted(Comparator.comparing(hand -> hand.visit().began())).toList();
        Problems problems = new Problems();
        visits.forEach(hand -> problems.take(InvoiceAssembly.dated(hand, options)));
        List<BillTo> payers = visits.stream()
                .flatMap(hand -> problems.take(hand.site().billTo(options.date())).stream())
                .toList();
        same(visits, hand -> payers.get(visits.indexOf(hand)), "have other payers", problems, payers.size());
        same(visits, hand -> hand.site().customer().vendorNumber(), "have other vendor numbers", problems, 0);
        same(visits, hand -> hand.visit().order().purchaseOrder(), "are under other purchase orders", problems, 0);
        same(visits, hand -> hand.site().customer().paymentDays(), "have other terms of payment", problems, 0);
        same(visits, hand -> hand.rates().adjustments().earlyPayment(), "have other terms of early payment", problems,
                0);
        same(visits, hand -> hand.taxed().place().earlyPaymentReducesTax(),
                "have another rule on the tax of early payment", problems, 0);
        same(visits, hand -> hand.taxed().place().regime(), "have another kind of tax", problems, 0);
        same(visits, hand -> hand.taxed().priced().discount().map(SharedDiscount::text), "have another discount",
                problems, 0);
        return problems.or(() -> new CombinedInvoiceAssembly(visits, payers.getFirst())
                .invoice(options, visits.getFirst().language(options.language())));
    }

    /** A sales tax goes to authorities of its place, even where those of another charge the same. */
    private static Stream<VisitContext> placed(List<VisitContext> visits) {
        boolean apart = TotalsTogether.nameTheirPlaces(visits.stream().map(hand -> hand.taxed().place()).toList());
        return visits.stream().map(hand -> apart ? hand.namingTaxPlace() : hand);
    }

    /** @param known how many there is a value of; 0 for all */
    private static void same(List<VisitContext> visits, Function<VisitContext, Object> what, String differ,
            Problems problems, int known) {
        if (known > 0 && known < visits.size()) {
            return;
        }
        VisitContext first = visits.getFirst();
        visits.stream().filter(hand -> !what.apply(hand).equals(what.apply(first))).findFirst()
                .ifPresent(other -> problems.add(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "visits \"" + first.visit().id() + "\" and \"" + other.visit().id() + "\" " + differ,
                        "an invoice for each")));
    }

    private CombinedInvoice invoice(PaperOptions options, Language language) {
        VisitContext first = visits.getFirst();
        Shop shop = first.shop();
        LocalDate date = options.date();
        int days = first.site().customer().paymentDays().orElse(shop.paymentDays());
        LocalDate due = date.plusDays(days);
        List<Part> parts = visits.stream().map(hand -> part(hand, language)).toList();
        return new CombinedInvoice(options.number(), date, due, shop, language, shop.paper(), billTo,
                first.site().customer().vendorNumber(), parts,
                new EarlyPaymentAssembly(totals(first), parts.stream().flatMap(part -> part.lines().stream()).toList(),
                        shop.taxBasis(), date, due).offered(first.rates().adjustments().earlyPayment()),
                remarks());
    }

    private static Part part(VisitContext hand, Language language) {
        VisitReport report = new VisitReport(hand.site(), hand.visit(), hand.rates(), language);
        return new Part(InvoiceAssembly.attended(report, hand.shop()), report.machines(),
                new ChargeSheet(hand.site(), hand.taxed()).lines());
    }

    private Totals totals(VisitContext first) {
        return new TotalsTogether(visits.stream().map(hand -> new ChargeSheet(hand.site(), hand.taxed())).toList())
                .totals(first.shop().taxBasis());
    }

    /** What is said of a visit's limit names the visit. */
    private List<Phrase> remarks() {
        Stream<Phrase> taxes = visits.stream().flatMap(hand -> hand.taxed().remarks().stream()).distinct();
        Stream<Phrase> limits = visits.stream().flatMap(hand -> hand.visit().order().limit()
                .map(limit -> Phrase.of("remark.limit-of", new Fact.Text(hand.visit().id()), new Fact.Amount(limit)))
                .stream());
        return Stream.concat(taxes, limits).toList();
    }
}
