package icequill.einvoice;

import icequill.document.CreditNote;
import icequill.document.Invoice;
import icequill.document.InvoiceLine;
import icequill.document.ServicePeriod;
import icequill.document.Totals;
import icequill.document.VisitSummary;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Currencies;
import icequill.money.Percent;
import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.party.Remittance;
import icequill.party.SalesTaxEncoding;
import icequill.party.Shop;
import icequill.party.Sourcing;
import icequill.party.TaxBasis;
import icequill.party.Wording;
import icequill.pricer.UnitPrice;
import icequill.problem.Place;
import icequill.tax.LineTax;
import icequill.tax.TaxPlace;
import icequill.tax.TaxRate;
import icequill.tax.TaxRate.Category;
import icequill.tax.TaxRate.Component;
import icequill.tax.TaxRate.Levy;
import icequill.tax.TaxTotal;
import icequill.tax.Taxability;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import icequill.work.PurchaseOrder;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Bills whose every amount is written down by hand, so that nothing here is worked out by what is tested. */
final class BillBuilder {

    static final TaxRate STANDARD = rate("standard",
            new Component(Wording.same("VAT"), Percent.of("19"), Levy.NATION, Optional.empty(), Optional.empty()));
    static final TaxRate REDUCED = rate("reduced",
            new Component(Wording.same("VAT"), Percent.of("7"), Levy.NATION, Optional.empty(), Optional.empty()));
    static final TaxRate ZERO = new TaxRate("zero", Category.Z, List.of(), Optional.empty());
    static final TaxRate EXEMPT = new TaxRate("exempt", Category.E, List.of(),
            Optional.of(new Wording("exempt from VAT", "exento de IVA")));
    static final TaxRate REVERSE = new TaxRate("reverse", Category.AE, List.of(), Optional.empty());
    static final TaxRate WITHIN_EU = new TaxRate("within-eu", Category.K, List.of(), Optional.empty());
    static final TaxRate EXPORT = new TaxRate("export", Category.G, List.of(), Optional.empty());
    static final TaxRate OUTSIDE = new TaxRate("outside", Category.O, List.of(),
            Optional.of(new Wording("not subject to VAT", "no sujeto a IVA")));
    static final TaxRate SALES = rate("sales",
            new Component(new Wording("state", "estado"), Percent.of("4"), Levy.STATE, Optional.empty(),
                    Optional.empty()),
            new Component(new Wording("county", "condado"), Percent.of("4.5"), Levy.LOCAL, Optional.empty(),
                    Optional.empty()),
            new Component(new Wording("transit district", "distrito de transporte"), Percent.of("0.375"), Levy.LOCAL,
                    Optional.empty(), Optional.empty()));

    private final TaxPlace.Regime regime;
    private final CurrencyUnit currency;
    private final List<InvoiceLine> lines = new ArrayList<>();
    private final List<TaxTotal> taxes = new ArrayList<>();
    private Optional<Totals.Discount> discount = Optional.empty();
    private Shop shop;
    private BillTo billTo;
    private Optional<String> number = Optional.of("2026-0114");
    private Optional<String> vendorNumber = Optional.of("V-30881");
    private int nights;

    private BillBuilder(TaxPlace.Regime regime, String currency, Shop shop, BillTo billTo) {
        this.regime = regime;
        this.currency = Currencies.find(currency).orElseThrow();
        this.shop = shop;
        this.billTo = billTo;
    }

    /** A shop and a customer with VAT identifiers, in euros. */
    static BillBuilder vat() {
        Address shop = new Address(List.of("Speicherstraße 12", "Hof 2", "Tor B"), "Hafen", "", "20457", "DE");
        Address customer = new Address(List.of("Mühlenweg 3"), "Hafen", "", "20459", "DE");
        return new BillBuilder(TaxPlace.Regime.VAT, "EUR",
                shop(shop, "EUR", Optional.of("DE123456789"), Optional.of("DE02120300000000202051")),
                new BillTo("Bäckerei Ähre & Söhne", Optional.of("Buchhaltung"), customer,
                        Optional.of("b@aehre.example"),
                        Optional.of("DE987654321")));
    }

    Shop shop() {
        return shop;
    }

    /** A shop with a registration and a customer, in dollars. */
    static BillBuilder salesTax() {
        Address shop = new Address(List.of("12 Mill Lane"), "Alderton", "NY", "10999", "US");
        Address customer = new Address(List.of("1 Crust Street"), "Alderton", "NY", "10998", "US");
        return new BillBuilder(TaxPlace.Regime.SALES_TAX, "USD",
                shop(shop, "USD", Optional.empty(), Optional.of("0042")),
                new BillTo("Quern & Tabb", Optional.empty(), customer, Optional.empty(), Optional.empty()));
    }

    BillBuilder currency(String code) {
        return new BillBuilder(regime, code, shop, billTo);
    }

    BillBuilder shop(Function<Shop, Shop> change) {
        shop = change.apply(shop);
        return this;
    }

    BillBuilder billTo(Function<BillTo, BillTo> change) {
        billTo = change.apply(billTo);
        return this;
    }

    BillBuilder draft() {
        number = Optional.empty();
        return this;
    }

    BillBuilder withoutVendorNumber() {
        vendorNumber = Optional.empty();
        return this;
    }

    /** The work goes on until so many days later. */
    BillBuilder nights(int count) {
        nights = count;
        return this;
    }

    /** Minutes at an hourly price. */
    BillBuilder labor(long minutes, String hourly, String amount, TaxRate rate) {
        return line("Labor", Quantity.of(minutes, Unit.MINUTE), price(hourly, Unit.HOUR), amount, "0", amount, amount,
                Optional.of(rate), Outcome.CHARGED);
    }

    /** So many at a price each. */
    BillBuilder item(String name, String quantity, Unit unit, String price, String amount, TaxRate rate) {
        return line(name, new Quantity(new BigDecimal(quantity), unit), price(price, unit), amount, "0", amount, amount,
                Optional.of(rate), Outcome.CHARGED);
    }

    /** One at its price, with what is left of it after its share of a discount on the document. */
    BillBuilder single(String name, String amount, String base, Optional<TaxRate> rate) {
        return line(name, Quantity.of(1, Unit.EACH), price(amount, Unit.EACH), amount, "0", amount, base, rate,
                Outcome.CHARGED);
    }

    /** A line that is not quantity times price. */
    BillBuilder unpriced(String name, Unit unit, String amount, TaxRate rate) {
        return line(name, Quantity.of(1, unit), Optional.empty(), amount, "0", amount, amount, Optional.of(rate),
                Outcome.CHARGED);
    }

    BillBuilder notCharged(String name, String list, Outcome outcome, TaxRate rate) {
        return line(name, Quantity.of(1, Unit.EACH), price(list, Unit.EACH), list, list, "0", "0", Optional.of(rate),
                outcome);
    }

    BillBuilder line(String name, Quantity quantity, Optional<UnitPrice> price, String list, String allowance,
            String net, String base, Optional<TaxRate> rate, Outcome outcome) {
        Explanation how = Explanation.of(Figure.price(amount(net), ""),
                Phrase.of("reason.class-discount", new Fact.Text("loyalty"), new Fact.Part(Percent.of("10"))));
        LineTax tax = new LineTax(amount(base), Explanation.of(Figure.price(amount(base), "")), rate,
                Phrase.of("tax.exempt-class", new Fact.Word("class.disposal")));
        lines.add(new InvoiceLine(ChargeClass.PARTS, outcome, Phrase.of("line.material", new Fact.Text(name)),
                Optional.of("back room"), quantity, price, amount(list), amount(allowance), amount(net), how, tax));
        return this;
    }

    BillBuilder discount(String amount) {
        discount = Optional.of(new Totals.Discount(
                Phrase.of("discount.document", new Fact.Text("welcome discount")), amount(amount),
                Explanation.of(Figure.price(amount(amount), ""))));
        return this;
    }

    /** The tax at a rate, and its components' parts of it. */
    BillBuilder tax(TaxRate rate, String base, String tax, String... parts) {
        List<TaxTotal.ComponentTax> components = IntStream.range(0, rate.components().size())
                .mapToObj(i -> new TaxTotal.ComponentTax(rate.components().get(i),
                        amount(parts.length == 0 ? tax : parts[i]), Explanation.of(Figure.price(amount(tax), "")),
                        Optional.empty()))
                .toList();
        taxes.add(new TaxTotal(rate, amount(base), amount(tax), Explanation.of(Figure.price(amount(tax), "")),
                components));
        return this;
    }

    Invoice invoice(String sum, String net, String tax, String gross) {
        ZonedDateTime arrived = ZonedDateTime.of(2026, 5, 13, 16, 20, 0, 0, shop.zone());
        VisitSummary attended = new VisitSummary("V-7", "Mill Lane bakery", Optional.of("0042"), siteAddress(),
                Optional.empty(),
                new PurchaseOrder(Optional.of("PO-9"), Optional.empty(), Optional.empty(), Place.NOWHERE), arrived,
                arrived.plusDays(nights).plusMinutes(105), List.of(), Optional.empty());
        return new Invoice(number, LocalDate.of(2026, 5, 14), LocalDate.of(2026, 6, 13), shop, Language.ENGLISH,
                PaperSize.A4, billTo, vendorNumber, attended, List.of(), lines, totals(sum, net, tax, gross),
                List.of());
    }

    CreditNote creditNote(String sum, String net, String tax, String gross) {
        ServicePeriod served = new ServicePeriod("Mill Lane bakery", Optional.of("0042"), siteAddress(),
                Optional.of("PO-9"),
                LocalDate.of(2026, 5, 13), LocalDate.of(2026, 5, 13));
        return new CreditNote(number.map(invoice -> "C" + invoice), LocalDate.of(2026, 5, 20),
                new CreditNote.Original("2026-0114", LocalDate.of(2026, 5, 14)), "The filter was the wrong one.", shop,
                Language.ENGLISH, PaperSize.A4, billTo, vendorNumber, served, lines,
                IntStream.rangeClosed(1, lines.size()).boxed().toList(), totals(sum, net, tax, gross),
                List.of());
    }

    Optional<UnitPrice> price(String amount, Unit per) {
        return Optional.of(new UnitPrice(amount(amount), per));
    }

    private Totals totals(String sum, String net, String tax, String gross) {
        TaxPlace.Rule rule = new TaxPlace.Rule(Taxability.TAXABLE, STANDARD);
        TaxPlace place = new TaxPlace("place", Wording.same("place"), regime, "ST", Arrays.stream(ChargeClass.values())
                .collect(Collectors.toMap(Function.identity(), any -> rule)), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(),
                Place.NOWHERE);
        return new Totals(amount(sum), discount, amount(net), place, taxes, amount(tax), amount(gross));
    }

    private Address siteAddress() {
        return new Address(List.of("Backofen 1"), "Hafen", billTo.address().region(), "20459",
                billTo.address().country());
    }

    private MonetaryAmount amount(String number) {
        return Amounts.of(new BigDecimal(number), currency);
    }

    private static Shop shop(Address address, String currency, Optional<String> vatId, Optional<String> account) {
        return new Shop("Frost & Daughters", address, "555-0100", "office@frost.example",
                List.of(new Remittance.Detail("Tax ID", "00-1"), new Remittance.Detail("License", "ICE-7")), vatId,
                new Remittance("Frost Receivables", address, List.of(), account, Optional.empty(), Optional.empty()),
                ZoneId.of("America/New_York"),
                Currencies.find(currency).orElseThrow(), Language.ENGLISH, PaperSize.A4, "#7a2e1d", Optional.empty(),
                TaxBasis.INVOICE, Sourcing.MACHINE, Optional.empty(), 30, SalesTaxEncoding.PLAIN);
    }

    private static TaxRate rate(String id, Component... components) {
        return new TaxRate(id, Category.S, List.of(components), Optional.empty());
    }
}
