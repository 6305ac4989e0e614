package icequill.einvoice;

import static icequill.RatesFixture.USD;
import static icequill.RatesFixture.rates;
import static icequill.RatesFixture.site;
import static icequill.RatesFixture.usd;
import static icequill.einvoice.BillBuilder.EXEMPT;
import static icequill.einvoice.BillBuilder.OUTSIDE;
import static icequill.einvoice.BillBuilder.REDUCED;
import static icequill.einvoice.BillBuilder.SALES;
import static icequill.einvoice.BillBuilder.STANDARD;
import static icequill.einvoice.BillBuilder.ZERO;
import static icequill.einvoice.OfficialRulesTest.WORDING;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.AllRules;
import icequill.VisitBuilder;
import icequill.document.Bill;
import icequill.explain.HowReader;
import icequill.money.Amounts;
import icequill.money.Reduction;
import icequill.party.SalesTaxEncoding;
import icequill.party.Shop;
import icequill.party.TaxBasis;
import icequill.party.Wording;
import icequill.pricer.Pricer;
import icequill.problem.Place;
import icequill.rates.Rates;
import icequill.tax.BlockTax;
import icequill.tax.TaxCalculator;
import icequill.tax.TaxPlace;
import icequill.tax.TaxPlace.Rule;
import icequill.tax.TaxRate;
import icequill.tax.Taxability;
import icequill.work.Attendance;
import icequill.work.Block;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import icequill.work.OwnPrice;
import icequill.work.TakenBack;
import icequill.work.Visit;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.money.MonetaryAmount;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;

/** Whatever was done at a site, in whatever mix of taxes: it can be written, and each line works out. Seeds are fixed. */
@Tag("wide")
class AnyVisitTest {

    private static final TaxPlace VAT = place(TaxPlace.Regime.VAT, Map.of(ChargeClass.CLEANING, rule(STANDARD),
            ChargeClass.REPAIR, rule(REDUCED), ChargeClass.DIAGNOSIS, rule(EXEMPT), ChargeClass.TRAVEL, rule(ZERO),
            ChargeClass.CHEMICALS, new Rule(Taxability.SELLER_CONSUMES, STANDARD), ChargeClass.FILTERS, rule(OUTSIDE)));
    private static final TaxPlace SALES_TAX = place(TaxPlace.Regime.SALES_TAX, Map.of(ChargeClass.CLEANING, rule(SALES),
            ChargeClass.REPAIR, new Rule(Taxability.TAXABLE_IF_PARTS_ON_VISIT, SALES), ChargeClass.CHEMICALS,
            new Rule(Taxability.SELLER_CONSUMES, SALES), ChargeClass.PARTS, rule(SALES)));

    @Property(seed = "16931")
    void vat_anyVisit_isValidAndWorksOut(@ForAll("visits") Visit visit) throws Exception {
        assertRight(bill(visit, VAT, TaxBasis.INVOICE, BillBuilder.vat().shop()));
    }

    @Property(seed = "5153")
    void salesTax_anyVisit_isValidAndWorksOut(@ForAll("visits") Visit visit, @ForAll TaxBasis basis) throws Exception {
        assertRight(bill(visit, SALES_TAX, basis, BillBuilder.salesTax().shop()));
    }

    /** First hour, overtime, travel and miles, flat prices, fees, each day's service call, all on one bill. */
    @Property(seed = "1615")
    void byAllRules_anyVisit_isValidAndWorksOut(@ForAll("longVisits") Visit visit) throws Exception {
        assertRight(bill(visit, VAT, TaxBasis.INVOICE, BillBuilder.vat().shop(), AllRules.rates()));
        assertRight(bill(visit, SALES_TAX, TaxBasis.ITEM, BillBuilder.salesTax().shop(), AllRules.rates()));
    }

    /** Prices that are shown with tax: whatever is billed comes to what was shown, to the cent, and every figure tells so. */
    @Property(seed = "8875", tries = 25)
    void shownWithTax_anyVisit_isValidAndComesToWhatWasShown(@ForAll("visits") Visit visit, @ForAll TaxBasis basis)
            throws Exception {
        MonetaryAmount shown = Pricer.price(visit, site(), rates()).orElseThrow().net();

        for (TaxPlace place : List.of(withTax(VAT), withTax(SALES_TAX))) {
            Bill bill = bill(visit, place, basis,
                    (place.regime() == TaxPlace.Regime.VAT ? BillBuilder.vat() : BillBuilder.salesTax()).shop(),
                    place.shown(rates(), basis));

            assertThat(bill.totals().gross()).isEqualTo(shown);
            assertThat(bill.lines()).allSatisfy(line -> assertThat(HowReader.evaluate(line.how().text(USD)))
                    .isEqualByComparingTo(Amounts.number(line.net())));
            assertThat(bill.totals().taxes()).allSatisfy(tax -> assertThat(HowReader.evaluate(tax.how().text(USD)))
                    .isEqualByComparingTo(Amounts.number(tax.tax())));
            assertRight(bill);
        }
    }

    /** Some time was paid ahead, and was taxed then or is now; more of it is sold: every amount is told as it was figured. */
    @Property(seed = "30", tries = 25)
    void paidAhead_anyVisit_isValidAndWorksOut(@ForAll("visits") Visit visit, @ForAll TaxBasis basis,
            @ForAll BlockTax when) throws Exception {
        Visit drawing = visit.paidAhead(List.of(new Block.Held("earlier", visit.day(), "An hour and a half",
                usd("133.33"), AHEAD, new BigDecimal("12.5"), when == BlockTax.AT_USE)));

        for (TaxPlace place : List.of(VAT, SALES_TAX)) {
            Bill bill = bill(drawing, with(place, when), basis,
                    (place.regime() == TaxPlace.Regime.VAT ? BillBuilder.vat() : BillBuilder.salesTax()).shop());

            assertThat(bill.lines()).allSatisfy(line -> assertThat(HowReader.evaluate(line.how().text(USD)))
                    .isEqualByComparingTo(Amounts.number(line.net())));
            assertRight(bill);
        }
    }

    private static final Block AHEAD = new Block(Block.Of.MINUTES, 90,
            List.of(ChargeClass.CLEANING, ChargeClass.REPAIR, ChargeClass.DIAGNOSIS), Map.of(), Optional.empty(),
            Place.NOWHERE);

    private static TaxPlace with(TaxPlace place, BlockTax when) {
        return new TaxPlace(place.id(), place.name(), place.regime(), place.state(), place.rules(),
                place.ownAdvances(), place.earlyPaymentReducesTax(), place.pricesIncludeTax(), place.reliefs(),
                Optional.of(when), place.place());
    }

    private static TaxPlace withTax(TaxPlace place) {
        return new TaxPlace(place.id(), place.name(), place.regime(), place.state(), place.rules(),
                place.ownAdvances(), place.earlyPaymentReducesTax(), Optional.of(true), place.reliefs(),
                Optional.empty(),
                place.place());
    }

    @Provide
    Arbitrary<Visit> longVisits() {
        Arbitrary<ChargeClass> classes = Arbitraries.of(ChargeClass.CLEANING, ChargeClass.REPAIR, ChargeClass.TRAVEL);
        return Combinators.combine(Arbitraries.integers().between(1, 700), classes, classes,
                Arbitraries.of(true, false)).as((minutes, first, second, flat) -> {
                    VisitBuilder builder = VisitBuilder.visit().task("head", "descale", Outcome.CHARGED)
                            .task("flaker", "brush-condenser", Outcome.CHARGED)
                            .person("lead", stay("2026-05-13T15:00", minutes, first))
                            .person("helper", stay("2026-05-14T09:00", 75, second));
                    return (flat ? builder.flat(AllRules.SCOPE) : builder).build();
                });
    }

    private static Attendance.Spell stay(String arrived, int minutes, ChargeClass on) {
        return new Attendance.Spell(VisitBuilder.at(arrived), VisitBuilder.at(arrived).plusMinutes(minutes), on,
                Outcome.CHARGED);
    }

    private static void assertRight(Bill bill) throws Exception {
        byte[] ubl = EInvoice.ubl(bill, SalesTaxEncoding.EN16931, WORDING).orElseThrow();

        assertThat(SchematronRules.UBL_INVOICE.faults(ubl)).isEmpty();
        assertThat(SchematronRules.CII.faults(EInvoice.cii(bill, WORDING).orElseThrow())).isEmpty();
        for (byte[] xml : List.of(ubl, EInvoice.ubl(bill, SalesTaxEncoding.PLAIN, WORDING).orElseThrow())) {
            assertThat(LineArithmeticTest.readUbl(xml))
                    .allSatisfy(line -> assertThat(line.worked()).isEqualByComparingTo(line.net()));
        }
    }

    private static Bill bill(Visit visit, TaxPlace place, TaxBasis basis, Shop shop) {
        return bill(visit, place, basis, shop, rates());
    }

    private static Bill bill(Visit visit, TaxPlace place, TaxBasis basis, Shop shop, Rates rates) {
        return new PricedBill(shop, site(), visit, TaxCalculator.tax(
                Pricer.price(visit, site(), rates).orElseThrow(), place, basis, site().customer(), visit.day()))
                .invoice();
    }

    @Provide
    Arbitrary<Visit> visits() {
        Arbitrary<Integer> minutes = Arbitraries.integers().between(1, 700);
        Arbitrary<ChargeClass> classes = Arbitraries.of(ChargeClass.CLEANING, ChargeClass.REPAIR,
                ChargeClass.DIAGNOSIS);
        Arbitrary<List<String>> materials = Arbitraries
                .of("descaler", "sanitizer", "filter", "valve", "bottled-descaler").list().ofMaxSize(5);
        Arbitrary<Integer> hundredths = Arbitraries.integers().between(10, 4000);
        return Combinators.combine(minutes, classes, materials, hundredths, Arbitraries.of(Outcome.values()),
                Arbitraries.of(true, false)).as(AnyVisitTest::visit);
    }

    private static Visit visit(int minutes, ChargeClass on, List<String> used, int hundredths, Outcome outcome,
            boolean discounted) {
        VisitBuilder builder = VisitBuilder.visit().classDiscount("labor-only").surcharge("handling")
                .modifier("waiting", "17").person("lead", new Attendance.Spell(VisitBuilder.at("2026-05-13T15:00"),
                        VisitBuilder.at("2026-05-13T15:00").plusMinutes(minutes), on, Outcome.CHARGED));
        String amount = hundredths / 100 + "." + (hundredths % 100 + 100 + "").substring(1);
        OwnPrice each = new OwnPrice.Given(usd(amount), Optional.empty());
        builder.own(ChargeClass.PARTS, "2.5", each, Optional.empty()).own(ChargeClass.PARTS, "1", each,
                Optional.of(TakenBack.CORE_RETURN));
        builder.own(ChargeClass.TRAVEL, "3", each, Optional.empty()).less(new Reduction.Fixed(usd("2.35")))
                .less(ChargeClass.REPAIR, "7.5").sells(AHEAD);
        used.forEach(material -> builder.material(material, amount, outcome, Optional.empty()));
        return (discounted ? builder.documentDiscount("five-percent") : builder).build();
    }

    /** Classes without a rule of their own are taxed like cleaning. */
    private static TaxPlace place(TaxPlace.Regime regime, Map<ChargeClass, Rule> rules) {
        Rule other = rules.getOrDefault(ChargeClass.CLEANING, rule(STANDARD));
        return new TaxPlace("place", Wording.same("place"), regime, "NY", Arrays.stream(ChargeClass.values())
                .collect(Collectors.toMap(Function.identity(), on -> rules.getOrDefault(on, other))), Optional.empty(),
                Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Place.NOWHERE);
    }

    private static Rule rule(TaxRate rate) {
        return new Rule(rate.category().isTaxed() ? Taxability.TAXABLE : Taxability.EXEMPT, rate);
    }
}
