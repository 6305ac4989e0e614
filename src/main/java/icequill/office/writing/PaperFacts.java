package icequill.office.writing;

import icequill.document.Bill;
import icequill.document.CombinedInvoice;
import icequill.document.CreditNote;
import icequill.document.InstallmentInvoice;
import icequill.document.Invoice;
import icequill.document.InvoiceLine;
import icequill.document.MachineReport;
import icequill.document.MaintenanceQuote;
import icequill.document.Paper;
import icequill.document.PricedPaper;
import icequill.document.RepairQuote;
import icequill.document.ServicePeriod;
import icequill.document.StageInvoice;
import icequill.document.Totals;
import icequill.document.Where;
import icequill.ledger.find.SearchKeys;
import icequill.ledger.papers.PaperKind;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.Sums;
import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Machine;
import icequill.render.words.Sentences;
import icequill.tax.TaxRate;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** What the book keeps beside a paper's data: what it can be found by, and what it comes to. */
public final class PaperFacts {

    private PaperFacts() {
    }

    /** Those of any paper that is issued. */
    static SearchKeys ofPaper(Paper paper, Optional<String> customer) {
        return switch (paper) {
        case PricedPaper priced -> of(priced, customer);
        case MaintenanceQuote quote -> of(quote, customer);
        default -> throw new IllegalArgumentException("no kind of paper with a number: " + paper.getClass());
        };
    }

    /** Those of a paper with lines; the customer is whose site it is, as the book names him. */
    public static SearchKeys of(PricedPaper paper, Optional<String> customer) {
        ServicePeriod served = paper.served();
        Totals totals = paper.totals();
        String store = stores(paper);
        return new SearchKeys(who(paper.billTo(), customer, store), store, where(paper),
                served.purchaseOrder(), serials(paper), amounts(totals),
                Stream.of(paper.date(), served.from(), served.until()).distinct().toList());
    }

    /** Of several sites, the addresses of all. */
    private static String where(PricedPaper paper) {
        return all(places(paper), place -> address(place.address()));
    }

    /** Of several sites, the names and numbers of all. */
    private static String stores(PricedPaper paper) {
        return all(places(paper), place -> store(place.site(), place.storeNumber()));
    }

    private static String all(Stream<Where> places, Function<Where, String> told) {
        return places.map(told).distinct().collect(Collectors.joining("; "));
    }

    private static Stream<Where> places(PricedPaper paper) {
        return switch (paper) {
        case CombinedInvoice invoice -> invoice.parts().stream().map(CombinedInvoice.Part::attended)
                .map(visit -> new Where(visit.site(), visit.storeNumber(), visit.address()));
        case InstallmentInvoice invoice when invoice.sites().isPresent() -> invoice.sites().orElseThrow().all().stream()
                .map(InstallmentInvoice.BilledSite::where);
        default -> Stream.of(new Where(paper.served().site(), paper.served().storeNumber(), paper.served().address()));
        };
    }

    /** Those of a quote with choices. */
    public static SearchKeys of(MaintenanceQuote quote, Optional<String> customer) {
        String store = store(quote.where().site(), quote.where().storeNumber());
        return new SearchKeys(who(quote.billTo(), customer, store), store,
                address(quote.where().address()), Optional.empty(), serials(quote.machines().stream()),
                quote.choices().stream().flatMap(choice -> Stream.of(choice.net(), choice.gross())).distinct()
                        .toList(),
                List.of(quote.date()));
    }

    /** Who pays, and whose site it is where neither he nor the site is called so. */
    private static String who(BillTo billTo, Optional<String> customer, String store) {
        return customer.filter(name -> !name.equals(billTo.name()) && !store.startsWith(name))
                .map(name -> billTo.name() + ", " + name).orElse(billTo.name());
    }

    public static Sums sums(PricedPaper paper) {
        Sentences sentences = Sentences.of(paper.language(), paper.shop().address().country());
        Totals totals = paper.totals();
        return new Sums(totals.lines(), totals.net(), totals.tax(), totals.gross(),
                paper.lines().stream().map(line -> line(line, sentences)).toList());
    }

    /** What each authority gets, by the rate that it levies, so that two rates of one stay apart. */
    public static List<PaperReader.Levied> taxes(PricedPaper paper) {
        return paper.totals().taxes().stream().flatMap(total -> total.components().stream()
                .map(part -> new PaperReader.Levied(authority(total.rate(), part.component()), part.amount())))
                .toList();
    }

    private static String authority(TaxRate rate, TaxRate.Component component) {
        return component.name().english() + " " + component.percent().value().toPlainString() + " % of " + rate.id();
    }

    private static Sums.Line line(InvoiceLine line, Sentences sentences) {
        return new Sums.Line(line.chargeClass().name(), line.outcome().name(), sentences.say(line.text()), line.net(),
                line.tax().base());
    }

    /** The last day to pay, of a paper that asks for money. */
    public static Optional<LocalDate> due(PricedPaper paper) {
        return paper instanceof Bill bill ? bill.dueDate() : Optional.empty();
    }

    /** As its numbers count it. */
    public static PaperKind kind(PricedPaper paper) {
        return switch (paper) {
        case Invoice invoice -> PaperKind.INVOICE;
        case CombinedInvoice invoice -> PaperKind.INVOICE;
        case InstallmentInvoice payment -> PaperKind.INVOICE;
        case StageInvoice part -> PaperKind.INVOICE;
        case CreditNote credit -> PaperKind.CREDIT_NOTE;
        case RepairQuote quote -> PaperKind.REPAIR_QUOTE;
        };
    }

    private static List<String> serials(PricedPaper paper) {
        return switch (paper) {
        case Invoice invoice -> serials(invoice.machines().stream().map(MachineReport::machine));
        case RepairQuote quote -> serials(Stream.of(quote.machine()));
        case CombinedInvoice invoice -> serials(invoice.machines().map(MachineReport::machine));
        case InstallmentInvoice payment -> List.of();
        case StageInvoice part -> serials(Stream.of(part.machine()));
        case CreditNote credit -> List.of();
        };
    }

    private static List<String> serials(Stream<Machine> machines) {
        return machines.flatMap(machine -> machine.serial().stream()).distinct().toList();
    }

    private static List<MonetaryAmount> amounts(Totals totals) {
        return Stream.of(totals.gross(), totals.net()).distinct().toList();
    }

    private static String store(String site, Optional<String> number) {
        return number.map(known -> site + " " + known).orElse(site);
    }

    private static String address(Address address) {
        return String.join(", ", address.lines());
    }
}
