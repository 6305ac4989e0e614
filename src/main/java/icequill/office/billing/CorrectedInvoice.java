package icequill.office.billing;

import icequill.document.Bill;
import icequill.document.CombinedInvoice;
import icequill.document.CreditNote;
import icequill.document.InstallmentInvoice;
import icequill.document.Invoice;
import icequill.document.ServicePeriod;
import icequill.document.StageInvoice;
import icequill.document.Totals;
import icequill.document.VisitSummary;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.party.BillTo;
import icequill.party.Customer;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.GlyphCheck;
import icequill.shop.ShopFolder;
import icequill.work.PurchaseOrder;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An invoice that is issued in the place of one with a wrong addressee or purchase order: the same work, amounts and taxes.
 *
 * @param payer who is billed instead, and the shop's number in his books; empty to leave both
 * @param purchaseOrder empty to leave it
 */
record CorrectedInvoice(Bill original, LocalDate date, LocalDate due, Optional<Payer> payer,
        Optional<String> purchaseOrder) {

    private static final String REPLACES = "remark.replaces";

    /** Who is billed, and the shop's number in his books. */
    record Payer(BillTo billTo, Optional<String> vendorNumber) {}

    /** What is asked for, or why it cannot be. */
    static Validated<CorrectedInvoice> of(BookForms forms, Billing billing, CreditOptions.Reissue asked,
            LocalDate date) {
        if (asked.purchaseOrder().isEmpty() && asked.billTo().isEmpty()) {
            return Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "nothing is to be different",
                    "--purchase-order or --bill-to"));
        }
        Bill original = billing.bill();
        LocalDate due = switch (asked.due()) {
        case KEEP -> original.dueDate().orElseThrow();
        case RESTART -> date.plusDays(ChronoUnit.DAYS.between(original.date(), original.dueDate().orElseThrow()));
        };
        Validated<Optional<Payer>> payer = asked.billTo()
                .map(customer -> (customer.isEmpty()
                        ? ofSite(forms.shop(), billing)
                        : forms.payer(customer))
                        .then(found -> billed(found, date)).map(Optional::of))
                .orElse(Validated.valid(Optional.empty()));
        return payer.map(found -> new CorrectedInvoice(original, date, due, found, asked.purchaseOrder()));
    }

    private static Validated<Customer> ofSite(ShopFolder shop, Billing billing) {
        Optional<Site> site = shop.site(billing.issued().origin().site().orElse(""), Place.NOWHERE);
        return GlyphCheck.report(shop, new Problems()).or(() -> site.orElseThrow().customer());
    }

    private static Validated<Payer> billed(Customer customer, LocalDate day) {
        return customer.addressed().at(day).map(billTo -> Validated.valid(new Payer(billTo, customer.vendorNumber())))
                .orElseGet(() -> Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE,
                        "nobody is billed for " + customer.name() + " on " + day, "a billTo that covers the day")));
    }

    /** The invoice under its own number. */
    Bill bill(String number) {
        BillTo billTo = payer.map(Payer::billTo).orElse(original.billTo());
        Optional<String> vendorNumber = payer.map(Payer::vendorNumber).orElse(original.vendorNumber());
        Totals totals = original.totals().anew(date,
                isKept() ? 0 : ChronoUnit.DAYS.between(original.date(), date));
        return switch (original) {
        case Invoice old -> new Invoice(Optional.of(number), date, due, old.shop(), old.language(), old.size(), billTo,
                vendorNumber, attended(old.attended()), old.machines(), old.lines(), totals,
                remarks(old.remarks()), old.advanced());
        case CombinedInvoice old -> new CombinedInvoice(Optional.of(number), date, due, old.shop(), old.language(),
                old.size(), billTo, vendorNumber,
                old.parts().stream().map(part -> new CombinedInvoice.Part(attended(part.attended()), part.machines(),
                        part.lines())).toList(),
                totals, remarks(old.remarks()));
        case InstallmentInvoice old -> new InstallmentInvoice(Optional.of(number), date, due, old.shop(),
                old.language(), old.size(), billTo, vendorNumber, old.agreement(), old.plan(), old.payment(),
                old.payments(), served(old.served()), old.sites(), old.lines(), old.totals(), remarks(old.remarks()));
        case StageInvoice old -> new StageInvoice(Optional.of(number), date, due, old.shop(), old.language(),
                old.size(), billTo, vendorNumber, old.quote(), served(old.served()), old.machine(), old.work(),
                old.part(), old.stage(), old.ofPart(), old.lines(), old.totals(), remarks(old.remarks()));
        case CreditNote none -> throw new IllegalStateException("no invoice: " + none.number());
        };
    }

    /** Whether the customer has no more time to pay than he had. */
    private boolean isKept() {
        return original.dueDate().filter(due::equals).isPresent();
    }

    /** The remarks, and which invoice the customer can lay aside. */
    private List<Phrase> remarks(List<Phrase> old) {
        Phrase instead = Phrase.of(REPLACES, new Fact.Text(original.number().orElseThrow()),
                new Fact.Day(original.date()));
        return Stream.concat(old.stream().filter(phrase -> !phrase.key().equals(REPLACES)), Stream.of(instead))
                .toList();
    }

    private VisitSummary attended(VisitSummary old) {
        PurchaseOrder order = new PurchaseOrder(purchaseOrder.or(() -> old.order().purchaseOrder()),
                old.order().limit(),
                old.order().approver(), old.order().place());
        return new VisitSummary(old.visit(), old.site(), old.storeNumber(), old.address(), old.call(), order,
                old.arrived(), old.left(), old.people(), old.sold());
    }

    private ServicePeriod served(ServicePeriod old) {
        return new ServicePeriod(old.site(), old.storeNumber(), old.address(), purchaseOrder.or(old::purchaseOrder),
                old.from(), old.until(), old.severalSites());
    }
}
